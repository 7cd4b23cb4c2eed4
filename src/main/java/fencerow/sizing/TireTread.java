package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Ratio;

/**
 * Tread depth of tractor tires against the farm bar tread R1.
 *
 * <p>Source: {@link Source#TREAD_GUIDES}. R1 bars are about 1.5 in deep; one page has R1 and R4 the wrong way round.
 * Caution: {@link Caution#NOT_AN_APPROVAL}.
 */
public enum TireTread {
    R1("r1", 1.0),
    R1W("r1w", 1.2),
    /** Wet fields only. */
    R2("r2", 2.0),
    /** Industrial. */
    R4("r4", 0.7);

    private static final Length NEW_R1 = Length.ofInches(1.5);

    private final String id;
    private final Ratio depth;

    TireTread(String id, double depth) {
        this.id = id;
        this.depth = Ratio.ofFraction(depth);
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** New depth against that of R1. */
    public Ratio againstR1() {
        return depth;
    }

    /** Depth when new, about. */
    public Length newDepth() {
        return new Length(NEW_R1.si() * depth.si());
    }
}
