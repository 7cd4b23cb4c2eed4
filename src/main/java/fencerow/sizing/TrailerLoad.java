package fencerow.sizing;

import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;

/**
 * What stands on a trailer and hangs on the tow vehicle.
 *
 * <p>Formula: gross is trailer plus load; the tongue should carry 10 to 15 % of gross; gross must stay within the
 * trailer's rating, tow vehicle with the tongue within its own, both together within the combined rating. A negative
 * margin is over.
 *
 * <p>Source: {@link Source#VEHICLE_HANDBOOKS}; the rest is addition. Valid for ball-coupled trailers; tires, axles,
 * coupler, ball and hitch each have a limit of their own, the lowest rules. Caution: {@link Caution#ROAD_LAW},
 * {@link Caution#LOADING_ON_TRAILER}.
 *
 * @param load  tractor with loader, liquid, ballast, tools and fuel
 * @param gross trailer and load
 */
public record TrailerLoad(Mass load, Mass gross) {
    /** Any single mass, up to 20 t. */
    public static final Bounds<Mass> MASS = new Bounds<>("mass", Mass.ofKilograms(0), Mass.ofKilograms(20_000));
    /** Tongue load as a share of gross. */
    public static final Spread<Ratio> TONGUE_SHARE = Spread.of(Ratio.ofPercent(10), Ratio.ofPercent(15));

    /**
     * Adds up.
     *
     * @param trailer empty trailer
     * @param parts   all that is loaded
     * @throws OutOfRangeException if a mass is outside {@link #MASS}
     */
    public static TrailerLoad of(Mass trailer, Mass... parts) {
        double load = 0;
        for (Mass part : parts) {
            load += MASS.check(part);
        }
        return new TrailerLoad(new Mass(load), new Mass(load + MASS.as("trailer").check(trailer)));
    }

    /** Tongue load, low to high. */
    public Spread<Mass> tongue() {
        return Spread.of(
                new Mass(gross.si() * TONGUE_SHARE.low().si()), new Mass(gross.si() * TONGUE_SHARE.high().si()));
    }

    /** What is left of the trailer's rating (GVWR). */
    public Mass trailerMargin(Mass rating) {
        return new Mass(MASS.as("trailer-rating").check(rating) - gross.si());
    }

    /** What is left of the tow vehicle's rating with the heaviest usual tongue on it. */
    public Mass vehicleMargin(Mass vehicle, Mass rating) {
        double carried = MASS.as("vehicle").check(vehicle) + tongue().high().si();
        return new Mass(MASS.as("vehicle-rating").check(rating) - carried);
    }

    /** What is left of the combined rating (GCWR). */
    public Mass combinationMargin(Mass vehicle, Mass rating) {
        double together = MASS.as("vehicle").check(vehicle) + gross.si();
        return new Mass(MASS.as("combined-rating").check(rating) - together);
    }
}
