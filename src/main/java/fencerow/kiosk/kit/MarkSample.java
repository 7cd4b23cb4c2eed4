package fencerow.kiosk.kit;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import fencerow.explainers.Look;
import fencerow.explainers.Outline;
import fencerow.explainers.Piece;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;

/** Says what one way of marking a drawing's parts means: a patch marked that way, and the words. */
public final class MarkSample extends HBox {
    private static final String PATCH = "patch";
    private static final double WIDE = 60;
    private static final double HIGH = 36;
    private static final double EDGE = 4;
    private static final double MILLIMETRES = 13;

    /** A patch and its words. */
    public MarkSample(Scale scale, PartMark mark, String words) {
        DrawingPane patch = new DrawingPane(patch(), words);
        patch.mark(Map.of(PATCH, mark));
        double width = scale.px(MILLIMETRES);
        patch.setMinWidth(width);
        patch.setMaxSize(width, width * HIGH / WIDE);
        getChildren().setAll(patch, Words.small(words));
        getStyleClass().add("mark-sample");
        setAlignment(Pos.CENTER_LEFT);
    }

    private static Drawing patch() {
        Outline outline = new Outline(List.of(
                new Outline.Step.Move(EDGE, EDGE), new Outline.Step.Line(WIDE - EDGE, EDGE),
                new Outline.Step.Line(WIDE - EDGE, HIGH - EDGE), new Outline.Step.Line(EDGE, HIGH - EDGE),
                new Outline.Step.Close()));
        Look look = new Look(Look.Ink.LINE, Look.Tone.LIGHT, Look.Ink.LINE.usualWidth(), false);
        return new Drawing(new Bounds(0, 0, WIDE, HIGH), PATCH, "",
                List.of(new Piece.Part(PATCH, List.of(new Piece.Shape(outline, look)))));
    }
}
