package fencerow.kiosk.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Amounts one below the other, each with what it is for; sums stand under a line. */
public final class Ledger extends VBox {
    private final Scale scale;

    /** Without lines yet. */
    public Ledger(Scale scale) {
        this.scale = scale;
        getStyleClass().add("ledger");
        setFillWidth(true);
    }

    /** With one line more. */
    public Ledger line(String what, String amount) {
        return add(what, amount, "ledger-line");
    }

    /** With a sum. */
    public Ledger sum(String what, String amount) {
        return add(what, amount, "ledger-sum");
    }

    /** With a remark about the lines above. */
    public Ledger note(String words) {
        getChildren().add(Words.small(words));
        return this;
    }

    private Ledger add(String what, String amount, String style) {
        Label right = Words.of("ledger-amount", amount);
        right.setAlignment(Pos.CENTER_RIGHT);
        Ends row = new Ends(scale, Words.of("ledger-what", what), right);
        row.getStyleClass().add(style);
        getChildren().add(row);
        return this;
    }
}
