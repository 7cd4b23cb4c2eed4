package fencerow.kiosk.work;

import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Words;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;
import javafx.scene.text.TextAlignment;

/** A tractor seen from the side, and below each axle a bar as long as its load is heavy. */
final class AxlesPane extends Pane {
    private static final double TRACTOR_EMS = 9;
    private static final double BAR_EMS = 4.5;
    private static final double BAR_WIDTH_EMS = 2.2;
    private static final double GAP_EMS = 0.3;
    /** Height of the drawing, in its own units; its length is 100. */
    private static final double DRAWN_HEIGHT = 62;
    private static final double FRONT_AXLE = 20;
    private static final double REAR_AXLE = 72;
    private static final double[] BODY = {8, 42, 9, 30, 42, 27, 46, 34, 78, 34, 80, 42};
    private static final double[] ROLL_BAR = {78, 34, 79, 3};
    private static final double[] SEAT = {44, 20, 49, 27, 49, 34, 60, 34, 60, 29, 69, 28, 72, 15};
    private static final double FRONT_RADIUS = 11;
    private static final double REAR_RADIUS = 19;

    private final double em;
    private final Polygon body = drawn(new Polygon());
    private final Polyline rollBar = line(new Polyline());
    private final Polyline seat = line(new Polyline());
    private final Circle frontWheel = drawn(new Circle());
    private final Circle rearWheel = drawn(new Circle());
    private final Part front;
    private final Part rear;

    AxlesPane(Scale scale, Picture.Axles axles) {
        this.em = scale.em();
        this.front = new Part(axles.front());
        this.rear = new Part(axles.rear());
        getStyleClass().add("plot");
        setAccessibleText(axles.alternative());
        getChildren().addAll(body, rollBar, seat, rearWheel, frontWheel);
        for (Part part : List.of(front, rear)) {
            getChildren().addAll(part.bar, part.label);
            part.least.ifPresent(getChildren()::add);
        }
    }

    /** What is below one axle. */
    private static final class Part {
        private final Picture.Bar load;
        private final Region bar = new Region();
        private final Label label;
        private final Optional<Line> least;

        Part(Picture.Bar load) {
            this.load = load;
            this.label = Words.of("plot-words", load.name() + "\n" + load.amount());
            this.least = load.least().map(share -> {
                Line line = new Line();
                line.getStyleClass().add("plot-least");
                line.setManaged(false);
                return line;
            });
            bar.getStyleClass().add("plot-bar");
            label.setAlignment(Pos.TOP_CENTER);
            label.setTextAlignment(TextAlignment.CENTER);
        }
    }

    private static <S extends Shape> S drawn(S shape) {
        shape.getStyleClass().add("plot-drawn");
        shape.setManaged(false);
        return shape;
    }

    private static Polyline line(Polyline line) {
        line.getStyleClass().add("plot-outline");
        line.setManaged(false);
        return line;
    }

    private double labelHeight(double width) {
        return Math.max(front.label.prefHeight(width), rear.label.prefHeight(width));
    }

    /** Pixels for one of the drawing's units. */
    private double unit(double width) {
        return Math.min(TRACTOR_EMS * em / DRAWN_HEIGHT, width / 100);
    }

    private static double labelWidth(double width) {
        return Math.floor(width * (REAR_AXLE - FRONT_AXLE) / 100);
    }

    private double drawnWidth(double width) {
        return Math.min(width, Math.max(unit(width) * 100, 26 * em));
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = drawnWidth(width <= 0 ? 26 * em : width);
        return Math.ceil(unit(wide) * DRAWN_HEIGHT + BAR_EMS * em + 2 * GAP_EMS * em + labelHeight(labelWidth(wide)));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double wide = drawnWidth(getWidth());
        double across = wide / 100;
        double unit = unit(wide);
        layOutTractor(across, unit);
        double ground = unit * DRAWN_HEIGHT;
        layOut(front, FRONT_AXLE * across, ground, labelWidth(wide));
        layOut(rear, REAR_AXLE * across, ground, labelWidth(wide));
    }

    private void layOutTractor(double across, double unit) {
        body.getPoints().setAll(scaled(BODY, across, unit));
        rollBar.getPoints().setAll(scaled(ROLL_BAR, across, unit));
        seat.getPoints().setAll(scaled(SEAT, across, unit));
        wheel(frontWheel, FRONT_AXLE * across, FRONT_RADIUS * unit, unit);
        wheel(rearWheel, REAR_AXLE * across, REAR_RADIUS * unit, unit);
    }

    private static Double[] scaled(double[] drawing, double across, double unit) {
        Double[] points = new Double[drawing.length];
        for (int i = 0; i < drawing.length; i++) {
            points[i] = i % 2 == 0 ? drawing[i] * across : drawing[i] * unit;
        }
        return points;
    }

    private static void wheel(Circle circle, double x, double radius, double unit) {
        circle.setCenterX(x);
        circle.setCenterY((DRAWN_HEIGHT - 1) * unit - radius);
        circle.setRadius(radius);
    }

    private void layOut(Part part, double x, double ground, double labelWidth) {
        double top = ground + GAP_EMS * em;
        double length = BAR_EMS * em;
        double wide = BAR_WIDTH_EMS * em;
        part.bar.resizeRelocate(x - wide / 2, top, wide, Math.max(1, part.load.share() * length));
        part.least.ifPresent(line -> {
            double y = top + part.load.least().orElse(0.0) * length;
            line.setStartX(x - wide);
            line.setEndX(x + wide);
            line.setStartY(y);
            line.setEndY(y);
        });
        double left = Math.max(0, Math.min(getWidth() - labelWidth, x - labelWidth / 2));
        part.label.resizeRelocate(left, top + length + GAP_EMS * em, labelWidth, part.label.prefHeight(labelWidth));
    }
}
