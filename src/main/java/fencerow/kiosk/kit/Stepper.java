package fencerow.kiosk.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;

/** Sets an amount by taps: less, the amount, more. */
public final class Stepper extends HBox {
    private final Label value = Words.of(Styles.NUMBER, "");
    private final Touch less;
    private final Touch more;

    /**
     * Without an amount yet.
     *
     * @param lessName the name of the button that takes away
     * @param moreName the name of the button that adds
     */
    public Stepper(String lessName, String moreName, Runnable onLess, Runnable onMore) {
        less = new Touch(lessName, Icon.MINUS.node(), onLess).styled(Styles.SECONDARY, "step");
        more = new Touch(moreName, Icon.PLUS.node(), onMore).styled(Styles.SECONDARY, "step");
        StackPane middle = new StackPane(value);
        middle.getStyleClass().add("stepper-value");
        getStyleClass().add(Styles.STEPPER);
        setAlignment(Pos.CENTER_LEFT);
        getChildren().setAll(less, Boxes.growing(middle), more);
    }

    /** Shows an amount, in words of the shopper's language and units. */
    public void show(String amount, boolean canLess, boolean canMore) {
        value.setText(amount);
        less.setDisable(!canLess);
        more.setDisable(!canMore);
    }
}
