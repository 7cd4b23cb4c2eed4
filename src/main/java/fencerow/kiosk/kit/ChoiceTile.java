package fencerow.kiosk.kit;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * One answer to pick. Chosen or not is shown by the mark's shape (an empty ring or box, a filled one with a check mark)
 * and the edge, not by colour alone.
 */
public final class ChoiceTile extends Touch {
    private final HBox row;

    private ChoiceTile(String name, HBox content, AccessibleRole role, Runnable action) {
        super(name, content, action);
        row = content;
        getStyleClass().add(Styles.TILE);
        setAccessibleRole(role);
    }

    /** One of several answers of which only one holds: a round mark. */
    public static ChoiceTile one(String words, Optional<String> hint, boolean chosen, Runnable action) {
        return tile(words, hint, "round", AccessibleRole.RADIO_BUTTON, chosen, action);
    }

    /** One of several answers that may hold together: a square mark. */
    public static ChoiceTile several(String words, Optional<String> hint, boolean chosen, Runnable action) {
        return tile(words, hint, "square", AccessibleRole.CHECK_BOX, chosen, action);
    }

    private static ChoiceTile tile(
            String words, Optional<String> hint, String shape, AccessibleRole role, boolean chosen, Runnable action) {
        StackPane mark = new StackPane(Icon.CHECK.node());
        mark.getStyleClass().addAll(Styles.MARK, shape);
        Label label = Words.of("tile-words", words);
        VBox text = Boxes.tight(label);
        hint.ifPresent(each -> text.getChildren().add(Words.of("tile-hint", each)));
        text.setAlignment(Pos.CENTER_LEFT);
        HBox row = new HBox(mark, Boxes.growing(text));
        row.getStyleClass().add("tile-row");
        row.setAlignment(Pos.CENTER_LEFT);
        ChoiceTile tile = new ChoiceTile(hint.map(each -> words + ". " + each).orElse(words), row, role, action);
        tile.select(chosen);
        return tile;
    }

    /** Puts a small drawing after the words. @return this */
    public ChoiceTile drawn(Sketch sketch) {
        DrawingPane pane = sketch.pane();
        pane.getStyleClass().add("tile-drawing");
        row.getChildren().add(pane);
        getStyleClass().add("drawn");
        return this;
    }
}
