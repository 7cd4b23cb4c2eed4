package fencerow.kiosk.kit;

import java.util.Collection;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A sheet of paper with a heading and lines to tick, as a picture of what will be printed. */
public final class PaperSketch extends VBox {
    /** Draws it. */
    public PaperSketch(String heading, Collection<String> lines) {
        getStyleClass().add("paper-sketch");
        getChildren().add(Words.subheading(heading));
        getChildren().add(Boxes.rule());
        for (String line : lines) {
            Region box = new Region();
            box.getStyleClass().add("tick-box");
            HBox row = new HBox(box, Boxes.growing(Words.of("sketch-words", line)));
            row.getStyleClass().add("sketch-line");
            row.setAlignment(Pos.TOP_LEFT);
            getChildren().add(row);
        }
    }
}
