package fencerow.sizing;

import fencerow.terms.Force;
import fencerow.terms.Length;
import fencerow.terms.Power;
import fencerow.terms.Speed;
import fencerow.terms.Spread;

/**
 * Draft of tillage tools: the pull that soil asks for.
 *
 * <p>Formula: {@code D = F (A + B S + C S^2) W T} [N], with soil factor F, speed S [km/h], width W [m] or number of
 * tools, depth T [cm].
 *
 * <p>Source: {@link Source#MACHINERY_MANAGEMENT_DATA}, from memory; single soils stray by 40 to 50 %, which the range
 * holds. Valid for the tools named; box blades and rakes are not in it. Caution: {@link Caution#NOT_AN_APPROVAL}.
 */
public enum Draft {
    /** Width in meters. */
    MOLDBOARD_PLOW("moldboard-plow", 652, 0, 5.1, 0.70, 0.45, 0.40, false),
    /** Number of shanks. */
    CHISEL_PLOW("chisel-plow", 91, 5.4, 0, 0.85, 0.65, 0.50, true),
    /** First pass; width in meters. */
    TANDEM_DISK("tandem-disk", 309, 16, 0, 0.88, 0.78, 0.50, false),
    /** Narrow point; number of shanks. */
    SUBSOILER("subsoiler", 226, 0, 1.8, 0.70, 0.45, 0.50, true);

    /** Texture of the soil. */
    public enum Soil {
        FINE("fine"),
        MEDIUM("medium"),
        COARSE("coarse");

        private final String id;

        Soil(String id) {
            this.id = id;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }
    }

    /** Working depth, 2 to 30 in. */
    public static final Bounds<Length> DEPTH = new Bounds<>("depth", Length.ofInches(2), Length.ofInches(30));
    /** Travel speed, 1 to 8 mph. */
    public static final Bounds<Speed> SPEED = new Bounds<>("speed", Speed.ofMph(1), Speed.ofMph(8));

    private final String id;
    private final double a;
    private final double b;
    private final double c;
    private final double medium;
    private final double coarse;
    private final double stray;
    private final boolean byShank;

    Draft(String id, double a, double b, double c, double medium, double coarse, double stray, boolean byShank) {
        this.id = id;
        this.a = a;
        this.b = b;
        this.c = c;
        this.medium = medium;
        this.coarse = coarse;
        this.stray = stray;
        this.byShank = byShank;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Whether the extent is a number of shanks; meters of width otherwise. */
    public boolean isByShank() {
        return byShank;
    }

    /**
     * Pull, with the usual stray between soils of one texture.
     *
     * @param extent meters of width or number of shanks, 0.2 to 12
     * @throws OutOfRangeException outside {@link #SPEED} or {@link #DEPTH}
     */
    public Spread<Force> pull(Soil soil, Speed speed, double extent, Length depth) {
        if (!(extent >= 0.2 && extent <= 12)) {
            throw new IllegalArgumentException("extent " + extent + " is outside the valid range; give 0.2 to 12");
        }
        SPEED.check(speed);
        double s = speed.toKilometersPerHour();
        double newtons = factor(soil) * (a + b * s + c * s * s) * extent * DEPTH.check(depth) * 100;
        return Spread.of(new Force(newtons * (1 - stray)), new Force(newtons * (1 + stray)));
    }

    /** Power at the drawbar for a pull at a speed. */
    public static Power drawbarPower(Force pull, Speed speed) {
        return new Power(pull.si() * speed.si());
    }

    private double factor(Soil soil) {
        return switch (soil) {
            case FINE -> 1.0;
            case MEDIUM -> medium;
            case COARSE -> coarse;
        };
    }
}
