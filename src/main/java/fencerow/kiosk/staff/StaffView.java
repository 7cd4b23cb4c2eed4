package fencerow.kiosk.staff;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Draws the PIN pad. */
final class StaffView {
    private static final List<String> ROWS = List.of("123", "456", "789", "0");

    private final StaffModel model;
    private final Frame frame;
    private final Touches touches;
    private final StackPane node = new StackPane();

    /** What can be touched. */
    interface Touches {
        void typed(String digit);

        void backspace();

        void enter();
    }

    StaffView(StaffModel model, Frame frame, Touches touches) {
        this.model = model;
        this.frame = frame;
        this.touches = touches;
        node.getChildren().setAll(column(pad()));
    }

    Node node() {
        return node;
    }

    private Column column(Node content) {
        return new Column(frame.scale(), content, 0, frame.say("column.up"), frame.say("column.down"));
    }

    private Node pad() {
        Label note = Words.body("");
        HBox dots = new HBox();
        dots.getStyleClass().add("pin-dots");
        frame.follow(model.typed(), typed -> dots.getChildren().setAll(dots(typed.length())));
        frame.follow(model.note(), shown ->
                note.setText(frame.say(shown.key(), Map.of("seconds", model.seconds().get()))));
        VBox pad = Boxes.stack(note, dots);
        for (String row : ROWS) {
            List<Node> keys = new ArrayList<>();
            row.codePoints().mapToObj(Character::toString).forEach(digit -> keys.add(key(digit)));
            if (row.equals("0")) {
                keys.add(new Touch(frame.say("keyboard.backspace"), Icon.BACKSPACE.node(), touches::backspace)
                        .styled(Styles.KEY, "pin-key"));
                keys.add(new Touch(frame.say("staff.enter"), Icon.CHECK.node(), touches::enter)
                        .styled(Styles.KEY, "pin-key"));
            }
            HBox line = Boxes.row(keys.toArray(Node[]::new));
            line.setAlignment(Pos.CENTER_LEFT);
            pad.getChildren().add(line);
        }
        return pad;
    }

    private static List<Node> dots(int count) {
        List<Node> dots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Region dot = new Region();
            dot.getStyleClass().add("pin-dot");
            dots.add(dot);
        }
        return dots;
    }

    private Touch key(String digit) {
        return new Touch(digit, Words.of("key-letter", digit), () -> touches.typed(digit))
                .styled(Styles.KEY, "pin-key");
    }
}
