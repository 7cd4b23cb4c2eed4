package fencerow.kiosk.kit;

import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;

/** A small piece of a drawing picked out one way, for a legend. Decoration: words beside it say what it means. */
public final class MarkSample extends StackPane {
    private static final double WIDTH = 44;
    private static final double HEIGHT = 28;

    /** In the shade and the kind of line of the mark. */
    public MarkSample(PartMark mark) {
        Rectangle sample = new Rectangle(WIDTH, HEIGHT);
        sample.getStyleClass().addAll("tone-fill-light", "ink-line");
        sample.pseudoClassStateChanged(mark.pseudoClass(), true);
        getStyleClass().addAll(Styles.DRAWING, "mark-sample");
        getChildren().setAll(sample);
    }
}
