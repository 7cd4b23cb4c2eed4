package fencerow.kiosk.kit;

import fencerow.explainers.Look;
import fencerow.explainers.Outline;
import fencerow.explainers.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/** Makes a drawing's pieces into shapes that the theme colours by their style classes. */
final class DrawnShapes {
    private static final double DASH = 2.6;

    private final Map<String, DrawnPart> parts = new LinkedHashMap<>();
    private final Map<Shape, List<String>> shapes = new LinkedHashMap<>();
    private final Group all = new Group();

    DrawnShapes(List<Piece> pieces) {
        add(pieces, all, List.of());
    }

    /** Everything, in the drawing's units. */
    Group all() {
        return all;
    }

    /** The parts by id, in drawing order. */
    Map<String, DrawnPart> parts() {
        return parts;
    }

    /** Every shape with the parts it belongs to, the innermost first. */
    Map<Shape, List<String>> shapes() {
        return shapes;
    }

    private void add(List<Piece> pieces, Group into, List<String> within) {
        for (Piece piece : pieces) {
            into.getChildren().add(node(piece, within));
        }
    }

    private Node node(Piece piece, List<String> within) {
        if (piece instanceof Piece.Part part) {
            DrawnPart drawn = new DrawnPart(part.id());
            parts.put(part.id(), drawn);
            List<String> deeper = new ArrayList<>(List.of(part.id()));
            deeper.addAll(within);
            add(part.pieces(), drawn, List.copyOf(deeper));
            return drawn;
        }
        Shape shape = piece instanceof Piece.Shape outline ? path(outline) : letters((Piece.Label) piece);
        shapes.put(shape, within);
        return shape;
    }

    private static Path path(Piece.Shape shape) {
        Path path = new Path();
        for (Outline.Step step : shape.outline().steps()) {
            if (step instanceof Outline.Step.Move move) {
                path.getElements().add(new MoveTo(move.x(), move.y()));
            } else if (step instanceof Outline.Step.Line line) {
                path.getElements().add(new LineTo(line.x(), line.y()));
            } else if (step instanceof Outline.Step.Curve curve) {
                path.getElements().add(new CubicCurveTo(
                        curve.x1(), curve.y1(), curve.x2(), curve.y2(), curve.x(), curve.y()));
            } else {
                path.getElements().add(new ClosePath());
            }
        }
        Look look = shape.look();
        path.getStyleClass().setAll("ink-" + look.ink().id(), "tone-" + look.tone().id());
        path.setStrokeWidth(look.width());
        path.setStrokeLineJoin(StrokeLineJoin.ROUND);
        path.setStrokeLineCap(look.dashed() ? StrokeLineCap.BUTT : StrokeLineCap.ROUND);
        if (look.dashed()) {
            path.getStrokeDashArray().setAll(DASH * look.width(), DASH * look.width());
        }
        return path;
    }

    /** Letters as outlines: they belong to the drawing and grow with it, not with the text size. */
    private static Shape letters(Piece.Label label) {
        Text text = new Text(label.words());
        text.setFont(Font.font("Roboto", FontWeight.BOLD, label.size()));
        double width = text.getLayoutBounds().getWidth();
        text.setX(label.x() - switch (label.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        });
        text.setY(label.y());
        Shape outline = Shape.union(text, new Rectangle());
        outline.getStyleClass().setAll("ink-" + Look.Ink.NONE.id(), "tone-" + label.tone().id());
        return outline;
    }
}
