package fencerow.sizing;

import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;
import fencerow.terms.Volume;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Ways to put weight on the rear axle, and what each does for a pound and takes away.
 *
 * <p>Formula: weight in or on the rear wheels counts once and leaves the front axle as it is; weight on the hitch at
 * e behind the rear axle counts {@code 1 + e / b} times and takes {@code e / b} off the front axle, wheelbase b.
 *
 * <p>Source: {@link Source#LEVER_STATICS}; what each takes away, {@link Source#TRADE_PRACTICE}. Fluid or wheel weights
 * do not replace hitch ballast where the loader's manual asks for it. Caution:
 * {@link Caution#AXLE_AND_TIRE_RATINGS}, {@link Caution#SLOPES}.
 */
public enum BallastSupply {
    TIRE_FLUID("tire-fluid", false, Drawback.STAYS_ON, Drawback.COMPACTS_LAWN, Drawback.CORROSION_OR_POISON,
            Drawback.NO_FRONT_RELIEF),
    WHEEL_WEIGHTS("wheel-weights", false, Drawback.SLOW_TO_REMOVE, Drawback.COMPACTS_LAWN, Drawback.NO_FRONT_RELIEF),
    BALLAST_BOX("ballast-box", true, Drawback.HITCH_TAKEN, Drawback.LONGER_TRACTOR),
    /** A box blade, backhoe or mower that the shopper has anyway. */
    OWNED_IMPLEMENT("owned-implement", true, Drawback.HITCH_TAKEN, Drawback.LONGER_TRACTOR);

    /** What a way of ballasting costs besides money. */
    public enum Drawback {
        STAYS_ON("stays-on"),
        SLOW_TO_REMOVE("slow-to-remove"),
        COMPACTS_LAWN("compacts-lawn"),
        CORROSION_OR_POISON("corrosion-or-poison"),
        NO_FRONT_RELIEF("no-front-relief"),
        HITCH_TAKEN("hitch-taken"),
        LONGER_TRACTOR("longer-tractor");

        private final String id;

        Drawback(String id) {
            this.id = id;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }
    }

    /** Dry sand in a box, from memory. */
    public static final Spread<Density> SAND_FILL =
            Spread.of(Density.ofPoundsPerCubicFoot(95), Density.ofPoundsPerCubicFoot(100));
    /** Concrete in a box, from memory. */
    public static final Spread<Density> CONCRETE_FILL =
            Spread.of(Density.ofPoundsPerCubicFoot(145), Density.ofPoundsPerCubicFoot(150));

    private final String id;
    private final boolean onHitch;
    private final Set<Drawback> drawbacks;

    BallastSupply(String id, boolean onHitch, Drawback... drawbacks) {
        this.id = id;
        this.onHitch = onHitch;
        Set<Drawback> all = EnumSet.noneOf(Drawback.class);
        Collections.addAll(all, drawbacks);
        this.drawbacks = Collections.unmodifiableSet(all);
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Whether it hangs on the hitch and so relieves the front axle. */
    public boolean isOnHitch() {
        return onHitch;
    }

    /** What it takes away. */
    public Set<Drawback> drawbacks() {
        return drawbacks;
    }

    /**
     * Where its weight acts behind the rear axle.
     *
     * @param hitchDistance rear axle to the center of what hangs on the hitch
     */
    public Length behindRearAxle(Length hitchDistance) {
        return onHitch ? hitchDistance : new Length(0);
    }

    /** What one kilogram of it adds to the rear axle: 1 in the wheels, more on the hitch. */
    public Ratio leverage(Length wheelbase, Length hitchDistance) {
        double b = Axles.WHEELBASE.check(wheelbase);
        return new Ratio(1 + behindRearAxle(hitchDistance).si() / b);
    }

    /** Mass of a filled box: its own and the fill's. */
    public static Mass box(Mass empty, Volume inside, Density fill) {
        return new Mass(empty.si() + inside.si() * fill.si());
    }
}
