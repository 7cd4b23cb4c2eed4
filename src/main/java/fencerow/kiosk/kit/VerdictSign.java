package fencerow.kiosk.kit;

import fencerow.match.Verdict;
import javafx.scene.layout.StackPane;

/** What a unit comes to, as its picture alone where the words stand nearby. */
public final class VerdictSign extends StackPane {
    /** For the verdict. */
    public VerdictSign(Verdict verdict) {
        super(VerdictBadge.icon(verdict).node());
        getStyleClass().addAll(Styles.BADGE, "verdict-sign", verdict.id());
    }
}
