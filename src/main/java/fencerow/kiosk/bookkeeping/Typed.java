package fencerow.kiosk.bookkeeping;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keyboard;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Words;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;

/** What is typed by touch, and the keys for it. */
public final class Typed {
    private Typed() {}

    /** A field that shows what is typed. */
    public static StackPane field(ObservableValue<String> words, boolean search) {
        Label typed = Words.of("field-words", "");
        typed.textProperty().bind(words);
        StackPane caret = new StackPane();
        caret.getStyleClass().add("caret");
        HBox line = search ? new HBox(Icon.SEARCH.node(), typed, caret) : new HBox(typed, caret);
        line.getStyleClass().add("field-row");
        StackPane field = new StackPane(line);
        field.getStyleClass().addAll(Styles.FIELD, "typing");
        return field;
    }

    /** Keys with which words are typed. */
    public static Keyboard keys(Frame frame, Supplier<String> now, Consumer<String> then) {
        var names = new Keyboard.Names(frame.say("keyboard.letters"), frame.say("keyboard.further"),
                frame.say("keyboard.space"), frame.say("keyboard.backspace"));
        return new Keyboard(frame.scale(), names, letter -> then.accept(now.get() + letter),
                () -> then.accept(shorter(now.get())));
    }

    /** Without its last letter. */
    public static String shorter(String typed) {
        return typed.isEmpty() ? typed : typed.substring(0, typed.offsetByCodePoints(typed.length(), -1));
    }
}
