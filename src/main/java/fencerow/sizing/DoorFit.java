package fencerow.sizing;

import fencerow.terms.Length;

/**
 * Room left when a tractor goes through a door.
 *
 * <p>Formula: opening less margin less the tractor, in height and in width (twice the side margin).
 *
 * <p>Source: {@link Source#GARAGE_DOORS}: doors are 84 in, newer ones 96 in; track, opener and weather strip take some,
 * so a margin of 2 in is {@link Source#TRADE_PRACTICE}. Valid with the bar measured up; tires move the height by 1 to
 * 3 in, ice by 2. Caution: {@link Caution#FOLDED_ROPS}.
 */
public final class DoorFit {
    /** Opening, 3 to 30 ft. */
    public static final Bounds<Length> OPENING = new Bounds<>("opening", Length.ofFeet(3), Length.ofFeet(30));
    /** Tractor's height or width, 2 to 20 ft. */
    public static final Bounds<Length> TRACTOR = new Bounds<>("tractor", Length.ofFeet(2), Length.ofFeet(20));
    /** Margin, up to 2 ft. */
    public static final Bounds<Length> MARGIN = new Bounds<>("margin", new Length(0), Length.ofFeet(2));
    /** Usual margin under a door. */
    public static final Length USUAL_MARGIN = Length.ofInches(2);

    private DoorFit() {}

    /** Room left in height; negative where it is too low. */
    public static Length above(Length doorHeight, Length tractorHeight, Length margin) {
        return new Length(OPENING.as("door-height").check(doorHeight)
                - MARGIN.check(margin)
                - TRACTOR.as("tractor-height").check(tractorHeight));
    }

    /** Room left on each side; negative where it is too narrow. */
    public static Length beside(Length doorWidth, Length tractorWidth, Length margin) {
        double spare = OPENING.as("door-width").check(doorWidth) - TRACTOR.as("tractor-width").check(tractorWidth);
        return new Length(spare / 2 - MARGIN.check(margin));
    }
}
