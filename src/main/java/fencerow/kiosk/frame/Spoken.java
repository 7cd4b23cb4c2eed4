package fencerow.kiosk.frame;

import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.Paragraph;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.text.Text;

/** What a screen says when it is read aloud: all its words in reading order, choices with their place among them. */
final class Spoken {
    private final Frame frame;
    private final List<String> said = new ArrayList<>();
    private final List<ChoiceTile> choices = new ArrayList<>();

    private Spoken(Frame frame) {
        this.frame = frame;
    }

    /** The words of a part of the screen, a line or a choice each. */
    static List<String> of(Frame frame, String title, Node content) {
        Spoken spoken = new Spoken(frame);
        spoken.collect(content, spoken.choices);
        spoken.add(title);
        spoken.read(content);
        return List.copyOf(spoken.said);
    }

    private void collect(Node node, List<ChoiceTile> all) {
        if (node instanceof ChoiceTile tile) {
            all.add(tile);
        } else if (node instanceof Parent parent && node.isVisible()) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, all));
        }
    }

    private void read(Node node) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof ChoiceTile tile) {
            add(frame.say(tile.isSelected() ? "aloud.choice-chosen" : "aloud.choice", Map.of(
                    "words", tile.getAccessibleText(),
                    "number", choices.indexOf(tile) + 1,
                    "count", choices.size())));
        } else if (node instanceof Touch touch) {
            if (!touch.getStyleClass().contains(Styles.KEY) && !touch.isDisabled()) {
                add(touch.getAccessibleText());
            }
        } else if (node instanceof Label label) {
            add(label.getText());
        } else if (node instanceof Paragraph paragraph) {
            add(paragraph.getChildrenUnmodifiable().stream()
                    .map(run -> ((Text) run).getText()).collect(Collectors.joining()));
        } else if (node instanceof DrawingPane) {
            add(node.getAccessibleText());
        } else if (node instanceof Column column) {
            read(column.content());
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::read);
        }
    }

    private void add(String words) {
        if (words != null && !words.isBlank()) {
            said.add(words.strip());
        }
    }
}
