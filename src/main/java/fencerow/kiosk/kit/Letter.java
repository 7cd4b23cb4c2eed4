package fencerow.kiosk.kit;

import javafx.scene.layout.StackPane;

/** A letter in a ring, by which one thing is told from others on the same screen. */
public final class Letter extends StackPane {
    /** The letter of the place in a row: A for 0. */
    public Letter(int index) {
        super(Words.of("letter-words", of(index)));
        getStyleClass().add("letter");
    }

    /** The letter alone. */
    public static String of(int index) {
        return Character.toString('A' + index);
    }
}
