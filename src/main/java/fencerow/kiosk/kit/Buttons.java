package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Buttons of the three weights: one primary on a screen, secondary beside it, quiet for what is always there. */
public final class Buttons {
    private Buttons() {}

    /** What the screen is for; at least 20 mm high. */
    public static Touch primary(Icon icon, String words, Runnable action) {
        return of(Optional.of(icon), words, action).styled(Styles.PRIMARY);
    }

    /** What can be done instead; at least 20 mm high. */
    public static Touch secondary(Icon icon, String words, Runnable action) {
        return of(Optional.of(icon), words, action).styled(Styles.SECONDARY);
    }

    /** A secondary button without a picture. */
    public static Touch secondary(String words, Runnable action) {
        return of(Optional.empty(), words, action).styled(Styles.SECONDARY);
    }

    /** What is on every screen, or leads aside; at least 15 mm high. */
    public static Touch quiet(Icon icon, String words, Runnable action) {
        return of(Optional.of(icon), words, action).styled(Styles.QUIET);
    }

    /** A picture alone, for what everyone knows; {@code name} says it in words to assistive tools. */
    public static Touch icon(Icon icon, String name, Runnable action) {
        return new Touch(name, icon.node(), action).styled(Styles.QUIET, "icon-only");
    }

    private static Touch of(Optional<Icon> icon, String words, Runnable action) {
        Label label = Words.of("button-words", words);
        HBox.setHgrow(label, Priority.SOMETIMES);
        List<Node> parts = new ArrayList<>();
        icon.ifPresent(each -> parts.add(each.node()));
        parts.add(label);
        HBox row = new HBox(parts.toArray(Node[]::new));
        row.getStyleClass().add("button-row");
        row.setAlignment(Pos.CENTER);
        return new Touch(words, row, action);
    }
}
