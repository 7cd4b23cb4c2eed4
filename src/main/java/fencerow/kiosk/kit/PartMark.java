package fencerow.kiosk.kit;

import javafx.css.PseudoClass;

/** How a part of a drawing is picked out from the rest; the theme gives each a shade and a kind of line of its own. */
public enum PartMark {
    /** What is spoken of. */
    LIT("lit"),
    /** It is on this tractor. */
    FITTED("fitted"),
    /** It can be added. */
    EXTRA("extra"),
    /** It is not there. */
    MISSING("missing"),
    /** Nobody knows yet whether it is there. */
    UNVERIFIED("unverified");

    private final PseudoClass pseudoClass;

    PartMark(String id) {
        this.pseudoClass = PseudoClass.getPseudoClass(id);
    }

    /** The state of a shape that the style sheets name. */
    PseudoClass pseudoClass() {
        return pseudoClass;
    }
}
