package fencerow.kiosk.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** A sign and a sentence: one reason for or against, one thing to look at. */
public final class Remark extends HBox {
    /** Draws it. */
    public Remark(Sign.Kind kind, String words) {
        Label label = Words.of("remark-words", words);
        getStyleClass().add("remark");
        setAlignment(Pos.TOP_LEFT);
        getChildren().setAll(new Sign(kind), Boxes.growing(label));
    }
}
