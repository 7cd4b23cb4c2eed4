package fencerow.kiosk.kit;

import fencerow.match.Verdict;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** What a unit comes to, as a picture and words on a label of its own shape and shade. */
public final class VerdictBadge extends HBox {
    /** For the verdict, which {@code words} name. */
    public VerdictBadge(Verdict verdict, String words) {
        Label label = Words.of("badge-words", words);
        getStyleClass().addAll(Styles.BADGE, verdict.id());
        setAlignment(Pos.CENTER_LEFT);
        setMaxWidth(USE_PREF_SIZE);
        getChildren().setAll(icon(verdict).node(), label);
    }

    static Icon icon(Verdict verdict) {
        return switch (verdict) {
            case READY -> Icon.CHECK;
            case READY_ONCE_EQUIPPED -> Icon.BUILD;
            case LOOK_CLOSER -> Icon.LOOK;
            case TO_ORDER -> Icon.ORDER;
            case CANNOT_BE_MADE_READY -> Icon.BLOCK;
        };
    }
}
