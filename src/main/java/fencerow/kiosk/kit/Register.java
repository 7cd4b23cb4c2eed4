package fencerow.kiosk.kit;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;

/** The shelves that things lie on, like the register of a handbook, and the shelf that is open. */
public final class Register extends BorderPane {
    /**
     * One shelf.
     *
     * @param number its place in a row; empty where it has none
     * @param chosen whether it is open
     * @param open   what a touch does
     */
    public record Shelf(String number, String name, boolean chosen, Runnable open) {}

    /** With the shelves to the left of what is on the open one, or above it on an upright screen. */
    public Register(
            Scale scale, boolean landscape, List<Shelf> shelves, Node open, String upName, String downName) {
        List<Touch> touches = shelves.stream().map(Register::shelf).toList();
        if (landscape) {
            Column register = new Column(scale, Boxes.stack(touches), 0, upName, downName);
            register.getStyleClass().add("register");
            open.getStyleClass().add("beside-register");
            setLeft(register);
            setCenter(open);
        } else {
            setCenter(Boxes.stack(new Wrap(scale, touches), Boxes.growing(open)));
        }
    }

    private static Touch shelf(Shelf shelf) {
        HBox row = Boxes.row(Words.of("shelf-name", shelf.name()));
        if (!shelf.number().isEmpty()) {
            row.getChildren().add(0, Words.of("shelf-number", shelf.number()));
        }
        return new Touch(shelf.name(), row, shelf.open()).styled("shelf").select(shelf.chosen());
    }
}
