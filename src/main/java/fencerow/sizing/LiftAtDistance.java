package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import java.util.Optional;

/**
 * How much a loader or a hitch lifts at a distance from the pins where its lift is rated.
 *
 * <p>Formula: the moment about the arms' pivot stays the same, {@code F(d) = F0 / (1 + k d)}, with lift F0 at the pins
 * [kg] and distance d from them [m]. From two ratings, F0 and F1 at d1: {@code k = (F0 / F1 - 1) / d1}, which is the
 * same as interpolating 1/F between them. From the arms' reach R0, pivot to pins: {@code k = 1 / R0}. What is carried
 * at its own distance takes off its own moment: {@code P(d) = [F0 - sum Wi (1 + k xi)] / (1 + k d)}.
 *
 * <p>Source: {@link Source#LEVER_STATICS}; rating points by {@link Source#LIFT_RATING_PRACTICE}. Valid from the pins to
 * twice the rated distance; {@link #isExtrapolated} above one and a half times. An estimate, never a rating: a
 * self-leveling linkage loses less, and tipping may rule ({@link LoaderPayload}). Caution:
 * {@link Caution#NOT_AN_APPROVAL}, {@link Caution#CARRY_LOW}.
 */
public final class LiftAtDistance {
    /** Lift capacity at the rating point, up to 10 t. */
    public static final Bounds<Mass> LIFT =
            new Bounds<>("lift", Mass.ofKilograms(10), Mass.ofKilograms(10_000));
    /** Distance of the second rating point, 8 in to 5 ft. */
    public static final Bounds<Length> RATED_DISTANCE =
            new Bounds<>("rated-distance", Length.ofInches(8), Length.ofInches(60));
    /** Horizontal distance from the arms' pivot to the pins, 2 to 12 ft. */
    public static final Bounds<Length> REACH = new Bounds<>("reach", Length.ofFeet(2), Length.ofFeet(12));

    private final double atPins;
    private final double fall;
    private final double rated;

    private LiftAtDistance(double atPins, double fall, double rated) {
        this.atPins = atPins;
        this.fall = fall;
        this.rated = rated;
    }

    /**
     * From two published ratings.
     *
     * @param atPins   lift at the pins or link ends
     * @param ahead    lift at {@code distance}, not more than at the pins
     * @param distance of the second rating, such as 500 mm on a loader and 610 mm (24 in) on a hitch
     * @throws OutOfRangeException outside {@link #LIFT} or {@link #RATED_DISTANCE}, or if {@code ahead} is above
     *         {@code atPins}
     */
    public static LiftAtDistance fromRatings(Mass atPins, Mass ahead, Length distance) {
        double near = LIFT.check(atPins);
        double far = new Bounds<>("lift-at-rated-distance", LIFT.min(), atPins).check(ahead);
        double apart = RATED_DISTANCE.check(distance);
        return new LiftAtDistance(near, (near / far - 1) / apart, apart);
    }

    /**
     * From the lift at the pins and the arms' reach, where nothing else is published.
     *
     * @throws OutOfRangeException outside {@link #LIFT} or {@link #REACH}
     */
    public static LiftAtDistance fromReach(Mass atPins, Length reach) {
        double arm = REACH.check(reach);
        return new LiftAtDistance(LIFT.check(atPins), 1 / arm, arm / 2);
    }

    /**
     * Lift at a distance.
     *
     * @throws OutOfRangeException if the distance is negative or above {@link #farthest}
     */
    public Mass at(Length distance) {
        return new Mass(atPins / (1 + fall * check(distance)));
    }

    /**
     * The rating at the rated distance with which the same linkage lifts a load at another distance.
     *
     * @param center the load's center ahead of the pins
     * @throws OutOfRangeException if the center is negative or above {@link #farthest}
     */
    public Mass ratingFor(Mass load, Length center) {
        return new Mass(load.si() * (1 + fall * check(center)) / (1 + fall * rated));
    }

    /**
     * What remains for the load when other things are carried too. Not below zero.
     *
     * @param center  the load's center ahead of the pins
     * @param carried what comes off the lift; none for bare pins
     * @throws OutOfRangeException if the center is negative or above {@link #farthest}
     */
    public Mass payload(Length center, Carried... carried) {
        double left = atPins;
        for (Carried each : carried) {
            left -= each.mass().si() * (1 + fall * each.center().si());
        }
        return new Mass(Math.max(0, left / (1 + fall * check(center))));
    }

    /**
     * How far ahead of the pins a load's center may lie; none where it is too heavy at the pins themselves. At most
     * {@link #farthest}.
     *
     * @param load    above zero
     * @param carried what comes off the lift; none for bare pins
     */
    public Optional<Length> reachFor(Mass load, Carried... carried) {
        double atBarePins = payload(new Length(0), carried).si();
        if (load.si() <= 0 || load.si() > atBarePins) {
            return Optional.empty();
        }
        double reach = fall == 0 ? Double.POSITIVE_INFINITY : (atBarePins / load.si() - 1) / fall;
        return Optional.of(new Length(Math.min(reach, 2 * rated)));
    }

    /** The farthest distance for which an answer is given: twice the rated one. */
    public Length farthest() {
        return new Length(2 * rated);
    }

    /** Whether the distance lies more than half as far again as the rated one, where the answer is a guess. */
    public boolean isExtrapolated(Length distance) {
        return distance.si() > 1.5 * rated + 1e-9;
    }

    private double check(Length distance) {
        double d = distance.si();
        if (d < 0 || d > 2 * rated + 1e-9) {
            throw new OutOfRangeException(
                    "load-center", distance.amount(), new Length(0).amount(), farthest().amount());
        }
        return d;
    }
}
