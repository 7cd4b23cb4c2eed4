package fencerow.kiosk.kit;

import javafx.scene.layout.StackPane;

/** A small sign that says how something stands, by its shape and picture; words beside it say the same. */
public final class Sign extends StackPane {
    /** How something stands. */
    public enum Kind {
        /** It is there; it speaks for it. */
        YES("yes", Icon.CHECK),
        /** It can be had for money. */
        EXTRA("extra", Icon.PLUS),
        /** It is not there; it speaks against it. */
        NO("no", Icon.MINUS),
        /** It cannot be had. */
        NEVER("never", Icon.CLOSE),
        /** Nobody has looked. */
        UNKNOWN("unknown", Icon.NOT_SURE);

        private final String style;
        private final Icon icon;

        Kind(String style, Icon icon) {
            this.style = style;
            this.icon = icon;
        }
    }

    /** Draws it. */
    public Sign(Kind kind) {
        super(kind.icon.node());
        getStyleClass().addAll("sign", kind.style);
    }
}
