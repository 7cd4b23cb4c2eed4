package fencerow.kiosk.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** How far along a run of questions one is: one mark a question, and the same in words. */
public final class Progress extends VBox {
    /**
     * Shows progress.
     *
     * @param done  questions behind
     * @param all   questions in all, as far as is known now; at least {@code done}
     * @param words the same in words
     */
    public Progress(int done, int all, String words) {
        HBox marks = new HBox();
        marks.getStyleClass().add("progress-marks");
        marks.setAlignment(Pos.CENTER_LEFT);
        for (int i = 0; i < all; i++) {
            Region mark = new Region();
            mark.getStyleClass().addAll("progress-mark", i < done ? "done" : i == done ? "now" : "ahead");
            marks.getChildren().add(Boxes.growing(mark));
        }
        Label label = Words.of(Styles.SMALL, words);
        getStyleClass().add(Styles.PROGRESS);
        getChildren().setAll(label, marks);
    }
}
