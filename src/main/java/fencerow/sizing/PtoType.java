package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Speed;

/**
 * Rear power take-off types: speed, shaft and splines. All turn clockwise seen from behind.
 *
 * <p>Formula: {@code n / 60} turns a second; a thing wound round the shaft runs at {@code pi d n / 60}.
 *
 * <p>Source: {@link Source#PTO_TYPES}; the mid shaft from memory. Caution: {@link Caution#PTO_GUARDS},
 * {@link Caution#PTO_SPEED_MATCH}.
 */
public enum PtoType {
    TYPE_1("type-1", 540, Length.ofInches(1.375), 6),
    TYPE_2("type-2", 1000, Length.ofInches(1.375), 21),
    TYPE_3("type-3", 1000, Length.ofInches(1.75), 20),
    TYPE_4("type-4", 1300, Length.ofMillimeters(57.5), 22),
    /** Belly shaft for decks and front tools. */
    MID("mid", 2000, Length.ofInches(1), 15);

    private final String id;
    private final int rpm;
    private final Length shaft;
    private final int splines;

    PtoType(String id, int rpm, Length shaft, int splines) {
        this.id = id;
        this.rpm = rpm;
        this.shaft = shaft;
        this.splines = splines;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Rated turns a minute. */
    public int rpm() {
        return rpm;
    }

    /** Shaft diameter. */
    public Length shaft() {
        return shaft;
    }

    /** Number of splines; six are straight, more are involute. */
    public int splines() {
        return splines;
    }

    /** Turns a second. */
    public double turnsPerSecond() {
        return rpm / 60.0;
    }

    /** Speed at which a thing of this diameter winds up. */
    public Speed windingSpeed(Length diameter) {
        return new Speed(Math.PI * diameter.si() * turnsPerSecond());
    }
}
