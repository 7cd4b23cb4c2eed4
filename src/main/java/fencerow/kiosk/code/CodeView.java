package fencerow.kiosk.code;

import fencerow.desk.ComeBackCode;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keyboard;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Words;
import fencerow.visit.Visit;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Draws the field and the keys; then, what is back. */
final class CodeView {
    private final CodeModel model;
    private final Frame frame;
    private final Touches touches;
    private final Page page;

    /** What can be touched. */
    interface Touches {
        void typed(String letter);

        void backspace();

        void look();

        void go(Place place);
    }

    CodeView(CodeModel model, Frame frame, Touches touches) {
        this.model = model;
        this.frame = frame;
        this.touches = touches;
        this.page = new Page(frame.scale(), 0, frame.say("column.up"), frame.say("column.down"));
        // So that a plugged-in keyboard types here at once.
        page.sceneProperty().subscribe(scene -> {
            if (scene != null) {
                page.requestFocus();
            }
        });
        frame.follow(model.back(), this::show);
    }

    Node node() {
        return page;
    }

    private void show(List<String> back) {
        if (back.isEmpty()) {
            page.show(typing());
            page.showFoot(frame.scale(), List.of(), List.of(
                    Buttons.primary(Icon.CHECK, frame.say("code.look"), touches::look)));
        } else {
            page.show(back(back));
            page.showFoot(frame.scale(),
                    List.of(Buttons.secondary(Icon.LIST, frame.say("results.list"),
                                    () -> touches.go(Place.ListPreview.TOP)),
                            Buttons.secondary(Icon.FIT, frame.say("ask.answers"),
                                    () -> touches.go(Place.AllAnswers.TOP))),
                    List.of(Buttons.primary(Icon.FIT, frame.say("ask.results"),
                            () -> touches.go(Place.Results.TOP))));
        }
    }

    private Node typing() {
        VBox words = Boxes.tight(Words.lead(frame.say("code.why")));
        if (!frame.visit().get().equals(Visit.NEW)) {
            words.getChildren().add(Words.body(frame.say("code.replaces")));
        }
        Label note = Words.body("");
        note.textProperty().bind(model.note());
        HBox notice = Boxes.row(Icon.CAUTION.node(), Boxes.growing(note));
        // One in the other's place: low down on the screen there is no room for both above the keys.
        notice.visibleProperty().bind(model.note().map(said -> !said.isEmpty()));
        notice.managedProperty().bind(notice.visibleProperty());
        words.visibleProperty().bind(notice.visibleProperty().not());
        words.managedProperty().bind(words.visibleProperty());
        Keyboard keys = Keyboard.ofCode(
                frame.scale(), frame.say("keyboard.backspace"), touches::typed, touches::backspace);
        keys.setMaxWidth(keys.prefWidth(-1));
        return Boxes.stack(words, field(), notice, keys);
    }

    private Node field() {
        Label typed = Words.of("field-words", "");
        typed.textProperty().bind(model.typed().map(ComeBackCode::grouped));
        StackPane caret = new StackPane();
        caret.getStyleClass().add("caret");
        HBox line = new HBox(typed, caret);
        line.getStyleClass().add("field-row");
        StackPane field = new StackPane(line);
        field.getStyleClass().addAll(Styles.FIELD, "typing");
        StackPane.setAlignment(line, Pos.CENTER_LEFT);
        return field;
    }

    private Node back(List<String> lines) {
        VBox box = Boxes.stack(Icon.CHECK.node(), Words.of("question", frame.say("code.back")));
        lines.forEach(line -> box.getChildren().add(Words.lead(line)));
        box.getStyleClass().addAll(Styles.MEASURE, "notice");
        return box;
    }
}
