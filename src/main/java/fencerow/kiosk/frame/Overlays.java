package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What is laid over a screen, in the same scene: one sheet at most, above it the question whether anyone is here. */
final class Overlays {
    /** The upper end of a sheet for who cannot reach far up. */
    private static final double BEYOND_REACH_MILLIMETRES = 100;

    private final Frame frame;
    private final StackPane layer = new StackPane();
    private Optional<Node> sheet = Optional.empty();
    private Optional<Node> question = Optional.empty();
    private Label seconds = new Label();

    Overlays(Frame frame) {
        this.frame = frame;
        layer.setPickOnBounds(false);
    }

    Node node() {
        return layer;
    }

    /** What lies on top of all else; nothing if the screen itself does. */
    List<Node> covers() {
        List<Node> all = layer.getChildren();
        return all.isEmpty() ? List.of() : List.of(all.get(all.size() - 1));
    }

    void lay(String title, Node content) {
        Label heading = Words.heading(title);
        HBox top = Boxes.row(Boxes.growing(heading), Buttons.quiet(Icon.CLOSE, frame.say("sheet.close"), this::lift));
        Column column = new Column(frame.scale(), content, 0, frame.say("column.up"), frame.say("column.down"));
        VBox card = Boxes.stack(top, Boxes.rule(), Boxes.growing(column));
        card.getStyleClass().add(Styles.SHEET);
        sheet = Optional.of(covering(frame, card, frame.say("sheet.close"), this::lift));
        refresh();
    }

    void lift() {
        sheet = Optional.empty();
        refresh();
    }

    /** Asks whether somebody is still here, or stops asking. */
    void follow(IdleWatch.State state) {
        if (state instanceof IdleWatch.State.Asking asking) {
            ask(asking.seconds());
        } else {
            stopAsking();
        }
    }

    private void ask(int secondsLeft) {
        if (question.isEmpty()) {
            seconds = Words.of("countdown", "");
            Touch stay = Buttons.primary(Icon.CHECK, frame.say("idle.stay"), frame::stay);
            String ask = frame.say("idle.ask");
            String why = frame.say(frame.doors().lock().isOpen() ? "staff.idle-why" : "idle.why");
            VBox card = Boxes.stack(Words.heading(ask), Words.body(why), seconds, stay);
            card.getStyleClass().addAll(Styles.SHEET, "asking");
            card.setAlignment(Pos.TOP_LEFT);
            question = Optional.of(covering(frame, card, frame.say("idle.stay"), frame::stay));
            refresh();
            frame.aloud.alert(ask + " " + why);
        }
        seconds.setText(frame.say("idle.seconds", Map.of("count", secondsLeft)));
    }

    void stopAsking() {
        if (question.isPresent()) {
            question = Optional.empty();
            refresh();
        }
    }

    void clear() {
        sheet = Optional.empty();
        question = Optional.empty();
        refresh();
    }

    /** A card over a veil; a touch beside the card does what {@code beside} says. */
    private static Node covering(Frame frame, VBox card, String name, Runnable beside) {
        Touch veil = new Touch(name, new Region(), beside);
        veil.getStyleClass().setAll(Styles.SCRIM);
        veil.setFocusTraversable(false);
        card.setMaxHeight(Region.USE_PREF_SIZE);
        StackPane room = new StackPane(card);
        boolean low = frame.comfort().isLow(frame.isLandscape());
        room.setAlignment(low ? Pos.BOTTOM_CENTER : Pos.CENTER);
        if (low) {
            StackPane.setMargin(card, new Insets(frame.scale().px(BEYOND_REACH_MILLIMETRES), 0, 0, 0));
        }
        room.getStyleClass().add("cover-room");
        room.setPickOnBounds(false);
        StackPane cover = new StackPane(veil, room);
        cover.getStyleClass().add("cover");
        return cover;
    }

    private void refresh() {
        layer.getChildren().clear();
        sheet.ifPresent(layer.getChildren()::add);
        question.ifPresent(layer.getChildren()::add);
    }
}
