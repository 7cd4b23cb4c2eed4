package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import java.util.Collection;

/**
 * Tie-downs of a load on a vehicle.
 *
 * <p>Formula: the sum of working load limits must be at least half the load. Half of a tie-down's limit counts where it
 * runs from the vehicle to the load, or around the load and back to the same side; all of it where it runs over to the
 * other side. The weakest part of a tie-down is its limit. Number, not blocked in front: one up to 5 ft and 1,100 lb;
 * two up to 10 ft; then one more for every further 10 ft or part. Blocked: one for every 10 ft or part. Machinery of
 * 10,000 lb and more: at least four.
 *
 * <p>Source: {@link Source#CARGO_SECUREMENT}, {@link Source#HEAVY_EQUIPMENT_SECUREMENT}. The rule binds commercial
 * vehicles; for others it is sound practice beside state law. Caution: {@link Caution#ROAD_LAW},
 * {@link Caution#RECHECK_TIE_DOWNS}.
 *
 * @param limit working load limit of its weakest part
 * @param run   how it runs
 */
public record TieDown(Mass limit, Run run) {
    /** Load on the vehicle, up to 40 t. */
    public static final Bounds<Mass> LOAD =
            new Bounds<>("load", Mass.ofKilograms(1), Mass.ofKilograms(40_000));
    /** Length of the load, up to 60 ft. */
    public static final Bounds<Length> LENGTH = new Bounds<>("load-length", Length.ofFeet(0.5), Length.ofFeet(60));

    private static final double HEAVY = Mass.ofPounds(10_000).si();

    /** How a tie-down runs. */
    public enum Run {
        /** From the vehicle to the load: half counts. */
        DIRECT("direct", 0.5),
        /** Around the load and back to the same side: half counts. */
        SAME_SIDE("same-side", 0.5),
        /** Over the load to the other side: all counts. */
        ACROSS("across", 1);

        private final String id;
        private final double share;

        Run(String id, double share) {
            this.id = id;
            this.share = share;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }

        /** Share of the working load limit that counts. */
        public double share() {
            return share;
        }
    }

    /** What counts of its limit. */
    public Mass counted() {
        return new Mass(limit.si() * run.share());
    }

    /** Heaviest load that these tie-downs hold: twice what counts of them. */
    public static Mass holds(Collection<TieDown> tieDowns) {
        return new Mass(2 * tieDowns.stream().mapToDouble(each -> each.counted().si()).sum());
    }

    /** How many tie-downs of one kind the strength rule asks for. */
    public int numberByStrength(Mass load) {
        return (int) Math.ceil(LOAD.check(load) / (2 * counted().si()) - 1e-9);
    }

    /**
     * How many tie-downs the length rule asks for.
     *
     * @param blocked whether the load is kept from moving forward by a headboard or another load
     * @throws OutOfRangeException outside {@link #LENGTH} or {@link #LOAD}
     */
    public static int numberByLength(Length length, Mass load, boolean blocked) {
        LENGTH.check(length);
        LOAD.check(load);
        double feet = length.toFeet() - 1e-9;
        if (blocked) {
            return Math.max(1, (int) Math.ceil(feet / 10));
        }
        if (feet <= 5 && load.toPounds() <= 1100 + 1e-6) {
            return 1;
        }
        return feet <= 10 ? 2 : 2 + (int) Math.ceil((feet - 10) / 10);
    }

    /** How many the rule for heavy machinery asks for; zero below 10,000 lb. */
    public static int numberForMachinery(Mass load) {
        return LOAD.check(load) >= HEAVY - 1e-6 ? 4 : 0;
    }
}
