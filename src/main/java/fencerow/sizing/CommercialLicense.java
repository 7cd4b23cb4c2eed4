package fencerow.sizing;

import fencerow.terms.Mass;

/**
 * Federal thresholds for commercial driving.
 *
 * <p>Formula: group A needs ratings of 26,001 lb or more together <em>and</em> a trailer rated over 10,000 lb; group B
 * a single vehicle of 26,001 lb; motor-carrier rules start at 10,001 lb. All count only in commerce.
 *
 * <p>Source: {@link Source#COMMERCIAL_LICENSE}. States differ, also for those who are not in commerce. Caution:
 * {@link Caution#ROAD_LAW}.
 */
public final class CommercialLicense {
    private static final double SLACK = 1e-6;
    private static final double BIG = Mass.ofPounds(26_001).si() - SLACK;
    private static final double TRAILER = Mass.ofPounds(10_000).si() + SLACK;
    private static final double CARRIER = Mass.ofPounds(10_001).si() - SLACK;

    private CommercialLicense() {}

    /** Whether group A is needed in commerce; both by their ratings (GVWR), within {@link TrailerLoad#MASS}. */
    public static boolean needsGroupA(Mass vehicleRating, Mass trailerRating) {
        return together(vehicleRating, trailerRating) >= BIG && trailerRating.si() > TRAILER;
    }

    /** Whether group B is needed in commerce, as for {@link #needsGroupA}; group A includes it. */
    public static boolean needsGroupB(Mass vehicleRating, Mass trailerRating) {
        return TrailerLoad.MASS.check(vehicleRating) >= BIG && !needsGroupA(vehicleRating, trailerRating);
    }

    /** Whether motor-carrier rules apply in commerce, as for {@link #needsGroupA}. */
    public static boolean isMotorCarrier(Mass vehicleRating, Mass trailerRating) {
        return together(vehicleRating, trailerRating) >= CARRIER;
    }

    private static double together(Mass vehicleRating, Mass trailerRating) {
        return TrailerLoad.MASS.as("vehicle-rating").check(vehicleRating)
                + TrailerLoad.MASS.as("trailer-rating").check(trailerRating);
    }
}
