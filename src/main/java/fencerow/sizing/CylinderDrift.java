package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Time;

/**
 * How far raised arms may sink with the engine off. No figure for compact-tractor loaders was found: these are of
 * nearby machines, warm oil, valve in neutral, measured at the cylinder rod.
 *
 * <p>Formula: the limits are compared as sinking speed.
 *
 * <p>Source: {@link Source#SERVICE_MANUAL_DRIFT}. Caution: {@link Caution#DRIFT_TEST}.
 */
public enum CylinderDrift {
    /** Wheel loader, empty, oil at 100 F. */
    WHEEL_LOADER("wheel-loader", 13, 5),
    /** The same, oil at 120 F. */
    WHEEL_LOADER_120_F("wheel-loader-120-f", 13, 2.7),
    /** The same, oil at 150 F. */
    WHEEL_LOADER_150_F("wheel-loader-150-f", 13, 1.7),
    /** Smallest of three compact loaders, lift. */
    COMPACT_LOADER_SMALL("compact-loader-small", 28.4, 15),
    COMPACT_LOADER_MEDIUM("compact-loader-medium", 23.3, 15),
    COMPACT_LOADER_LARGE("compact-loader-large", 22.1, 15),
    /** The same three, tilt with a loaded bucket. */
    COMPACT_TILT_SMALL("compact-tilt-small", 40.9, 15),
    COMPACT_TILT_MEDIUM("compact-tilt-medium", 33.5, 15),
    COMPACT_TILT_LARGE("compact-tilt-large", 26.4, 15),
    /** Army excavator, each cylinder. */
    EXCAVATOR("excavator", 20, 5);

    private final String id;
    private final Length limit;
    private final Time in;

    CylinderDrift(String id, double millimeters, double minutes) {
        this.id = id;
        this.limit = Length.ofMillimeters(millimeters);
        this.in = Time.ofMinutes(minutes);
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Largest sinking. */
    public Length limit() {
        return limit;
    }

    /** In this time. */
    public Time in() {
        return in;
    }

    /** Largest sinking in another time. */
    public Length limitIn(Time time) {
        return new Length(limit.si() * time.si() / in.si());
    }
}
