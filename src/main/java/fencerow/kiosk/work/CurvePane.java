package fencerow.kiosk.work;

import fencerow.kiosk.kit.Letter;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;

/**
 * A curve between two axes; where the truth is a range, a band with the curve through its middle. Loads stand as bars
 * from their least to their most, told apart by letters.
 */
final class CurvePane extends Pane {
    private static final double HEIGHT_EMS = 11;
    private static final double DOT_EMS = 0.4;
    private static final double LETTER_EMS = 1.35;
    /** Loads at one distance are moved aside by so much at a time. */
    private static final double ASIDE_EMS = 0.6;
    private static final double GAP_EMS = 0.4;

    private final double em;
    private final Picture.Curve curve;
    private final Polygon band = styled(new Polygon(), "plot-band");
    private final Polyline line = styled(new Polyline(), "plot-line");
    private final Line left = styled(new Line(), "plot-axis");
    private final Line foot = styled(new Line(), "plot-axis");
    private final List<Label> up = new ArrayList<>();
    private final List<Label> across = new ArrayList<>();
    private final List<Region> bars = new ArrayList<>();
    private final List<Letter> letters = new ArrayList<>();
    private final Optional<Circle> dot;

    CurvePane(Scale scale, Picture.Curve curve) {
        this.em = scale.em();
        this.curve = curve;
        this.dot = curve.now().map(now -> styled(new Circle(DOT_EMS * em), "plot-now"));
        getStyleClass().add("plot");
        setAccessibleText(curve.alternative());
        getChildren().addAll(band, line, left, foot);
        dot.ifPresent(getChildren()::add);
        curve.up().forEach(tick -> up.add(label(tick)));
        curve.across().forEach(tick -> across.add(label(tick)));
        for (int i = 0; i < curve.loads().size(); i++) {
            Region bar = new Region();
            bar.getStyleClass().add("plot-load");
            bars.add(bar);
            letters.add(new Letter(i));
        }
        getChildren().addAll(up);
        getChildren().addAll(across);
        getChildren().addAll(bars);
        getChildren().addAll(letters);
    }

    private static <S extends Shape> S styled(S shape, String style) {
        shape.getStyleClass().add(style);
        shape.setManaged(false);
        return shape;
    }

    private static Label label(Picture.Tick tick) {
        Label label = Words.of("plot-words", tick.words());
        label.setWrapText(false);
        return label;
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.ceil(HEIGHT_EMS * em);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double gap = GAP_EMS * em;
        double labels = up.stream().mapToDouble(each -> Math.ceil(each.prefWidth(-1))).max().orElse(0);
        double lineHeight = across.stream().mapToDouble(each -> each.prefHeight(-1)).max().orElse(0);
        double x0 = labels + gap;
        double y0 = getHeight() - lineHeight - gap;
        double top = lineHeight / 2;
        double width = Math.max(1, getWidth() - x0 - em);
        double height = Math.max(1, y0 - top);
        place(left, x0, top, x0, y0);
        place(foot, x0, y0, x0 + width, y0);
        layOutCurve(x0, y0, width, height);
        layOutLabels(x0, y0, width, height, gap);
        layOutLoads(x0, y0, width, height);
    }

    private static void place(Line line, double fromX, double fromY, double toX, double toY) {
        line.setStartX(fromX);
        line.setStartY(fromY);
        line.setEndX(toX);
        line.setEndY(toY);
    }

    private void layOutCurve(double x0, double y0, double width, double height) {
        band.getPoints().clear();
        line.getPoints().clear();
        for (Picture.Point point : curve.points()) {
            band.getPoints().addAll(x0 + point.x() * width, y0 - point.high() * height);
            line.getPoints().addAll(x0 + point.x() * width, y0 - (point.low() + point.high()) / 2 * height);
        }
        for (int i = curve.points().size() - 1; i >= 0; i--) {
            Picture.Point point = curve.points().get(i);
            band.getPoints().addAll(x0 + point.x() * width, y0 - point.low() * height);
        }
        dot.ifPresent(circle -> curve.now().ifPresent(now -> {
            circle.setCenterX(x0 + now.x() * width);
            circle.setCenterY(y0 - (now.low() + now.high()) / 2 * height);
        }));
    }

    private void layOutLabels(double x0, double y0, double width, double height, double gap) {
        double free = Double.MAX_VALUE;
        for (int i = 0; i < up.size(); i++) {
            Label label = up.get(i);
            double high = label.prefHeight(-1);
            double wide = Math.ceil(label.prefWidth(-1));
            double y = y0 - curve.up().get(i).at() * height - high / 2;
            label.setVisible(y + high <= free);
            label.resizeRelocate(x0 - gap - wide, y, wide, high);
            free = label.isVisible() ? y : free;
        }
        free = -1;
        for (int i = 0; i < across.size(); i++) {
            Label label = across.get(i);
            double wide = Math.ceil(label.prefWidth(-1));
            double x = x0 + curve.across().get(i).at() * width - wide / 2;
            x = Math.max(0, Math.min(getWidth() - wide, x));
            label.setVisible(x > free);
            label.resizeRelocate(x, y0 + gap, wide, label.prefHeight(-1));
            free = label.isVisible() ? x + wide + gap : free;
        }
    }

    private void layOutLoads(double x0, double y0, double width, double height) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < bars.size(); i++) {
            Picture.Point at = curve.loads().get(i).at();
            Spot spot = spot(x0 + at.x() * width, y0 - at.high() * height, y0 - at.low() * height, y0, spots);
            spots.add(spot);
            double wide = Math.max(2, em / 5);
            bars.get(i).resizeRelocate(spot.x - wide / 2, spot.high, wide, Math.max(wide, spot.low - spot.high));
            double size = LETTER_EMS * em;
            letters.get(i).resizeRelocate(spot.x - size / 2, spot.letter, size, size);
        }
    }

    /** Where a load is drawn: its bar from high to low, its letter from this height down. */
    private record Spot(double x, double high, double low, double letter) {}

    /** At its distance, or as little aside of it as keeps it apart from the others. */
    private Spot spot(double x, double high, double low, double y0, List<Spot> others) {
        double size = LETTER_EMS * em;
        double letter = Math.max(0, Math.min(y0 - size, (high + low) / 2 - size / 2));
        for (int i = 0;; i++) {
            double aside = (i % 2 == 0 ? -1 : 1) * Math.floor((i + 1) / 2.0) * ASIDE_EMS * em;
            Spot spot = new Spot(x + aside, high, low, letter);
            if (others.stream().noneMatch(other -> collide(spot, other))) {
                return spot;
            }
        }
    }

    private boolean collide(Spot one, Spot other) {
        double apart = Math.abs(one.x - other.x);
        double size = (LETTER_EMS + GAP_EMS) * em;
        boolean letters = apart < size && Math.abs(one.letter - other.letter) < size;
        double top = Math.min(one.high, one.letter);
        double end = Math.max(one.low, one.letter + size);
        boolean bars = apart < size / 2 + ASIDE_EMS * em / 2
                && top < Math.max(other.low, other.letter + size) && Math.min(other.high, other.letter) < end;
        return letters || bars;
    }
}
