package fencerow.kiosk.kit;

import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;

/** Sets an amount by touches: less, the amount, more. A finger that stays on a button goes on by itself. */
public final class Stepper extends HBox {
    private final Label value = Words.of("step-amount", "");
    private final Touch less;
    private final Touch more;

    /**
     * Without an amount yet.
     *
     * @param lessName the name of the button that takes away
     * @param moreName the name of the button that adds
     * @param move     told by how many steps the amount is to change; negative for less
     */
    public Stepper(String lessName, String moreName, IntConsumer move) {
        less = button(lessName, Icon.MINUS, steps -> move.accept(-steps));
        more = button(moreName, Icon.PLUS, move);
        StackPane middle = new StackPane(value);
        middle.getStyleClass().add("stepper-value");
        getStyleClass().add(Styles.STEPPER);
        setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(less, Boxes.growing(middle), more);
    }

    private static Touch button(String name, Icon icon, IntConsumer move) {
        var repeat = new Repeat(move);
        Touch touch = new Touch(name, icon.node(), repeat::touched).styled(Styles.SECONDARY, "step");
        repeat.watch(touch);
        return touch;
    }

    /** Shows an amount, in words of the shopper's language and units. */
    public void show(String amount, boolean canLess, boolean canMore) {
        value.setText(amount);
        less.setDisable(!canLess);
        more.setDisable(!canMore);
    }
}
