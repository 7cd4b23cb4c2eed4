package fencerow.sizing.catalogue;

import fencerow.sizing.Caution;
import fencerow.sizing.DoorFit;
import fencerow.sizing.Limit;
import fencerow.sizing.Source;
import fencerow.sizing.TurningSpace;
import fencerow.sizing.Warning;
import fencerow.terms.Angle;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import java.util.List;

/** Whether the tractor fits at home. */
final class FitCalculations {
    private static final Measured<Length> DOOR_HEIGHT = Measured.of(
                    DoorFit.OPENING.as("door-height"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(84))
            .usual(Length.ofFeet(6), Length.ofFeet(16));
    private static final Measured<Length> DOOR_WIDTH = Measured.of(
                    DoorFit.OPENING.as("door-width"), Length::of, Length.ofInches(1))
            .preset(Length.ofFeet(9))
            .usual(Length.ofFeet(5), Length.ofFeet(24));
    private static final Measured<Length> HEIGHT = Measured.of(
                    DoorFit.TRACTOR.as("tractor-height"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(92))
            .usual(Length.ofInches(65), Length.ofInches(115));
    /** Left out where the bar does not fold or a cab is on. */
    private static final Measured<Length> FOLDED = Measured.of(
                    DoorFit.TRACTOR.as("height-folded"), Length::of, Length.ofInches(1))
            .usual(Length.ofInches(55), Length.ofInches(90));
    private static final Measured<Length> WIDTH = Measured.of(
                    DoorFit.TRACTOR.as("tractor-width"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(60))
            .usual(Length.ofInches(40), Length.ofInches(90));
    private static final Measured<Length> MARGIN =
            Measured.of(DoorFit.MARGIN, Length::of, Length.ofInches(1)).preset(DoorFit.USUAL_MARGIN);
    private static final Measured<Angle> STEERING = Measured.of(
                    TurningSpace.STEERING, Angle::of, Angle.ofDegrees(5))
            .preset(Angle.ofDegrees(45), Angle.ofDegrees(55));
    private static final Measured<Length> TRACK = Measured.of(
                    TurningSpace.WIDTH.as("track"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(40));
    private static final Measured<Length> AHEAD = Measured.of(
                    TurningSpace.OVERHANG.as("reach-ahead"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(60));
    private static final Measured<Length> BEHIND = Measured.of(
                    TurningSpace.OVERHANG.as("reach-behind"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(60));

    private static final Output ABOVE = new Output("room-above", Dimension.LENGTH);
    private static final Output ABOVE_FOLDED = new Output("room-above-folded", Dimension.LENGTH);
    private static final Output BESIDE = new Output("room-beside", Dimension.LENGTH);
    private static final Output RADIUS = new Output("turning-radius", Dimension.LENGTH);
    private static final Output ACROSS = new Output("width-to-turn-round", Dimension.LENGTH);
    private static final Output LENGTH = new Output("storage-length", Dimension.LENGTH);

    private FitCalculations() {}

    static List<Calculation> all() {
        return List.of(
                Calculation.named("door", Topic.FIT)
                        .asks(DOOR_HEIGHT, DOOR_WIDTH, HEIGHT, FOLDED, WIDTH, MARGIN)
                        .gives(ABOVE, ABOVE_FOLDED, BESIDE)
                        .from(Source.GARAGE_DOORS, Source.TRADE_PRACTICE)
                        .beware(Caution.FOLDED_ROPS, Caution.ROPS_AND_BELT)
                        .by(FitCalculations::door),
                Calculation.named("turning", Topic.FIT)
                        .asks(TractorParameters.WHEELBASE, STEERING, TRACK, WIDTH, AHEAD, BEHIND)
                        .gives(RADIUS, ACROSS, LENGTH)
                        .from(Source.GEOMETRY)
                        .beware(Caution.CARRY_LOW, Caution.SLOPES)
                        .by(FitCalculations::turning));
    }

    private static void door(Point in, Outcome out) {
        Length above = DoorFit.above(in.get(DOOR_HEIGHT), in.get(HEIGHT), in.get(MARGIN));
        Length beside = DoorFit.beside(in.get(DOOR_WIDTH), in.get(WIDTH), in.get(MARGIN));
        out.put(ABOVE, above).put(BESIDE, beside);
        in.find(FOLDED).ifPresent(folded -> {
            Length spare = DoorFit.above(in.get(DOOR_HEIGHT), folded, in.get(MARGIN));
            out.put(ABOVE_FOLDED, spare);
            out.warnIf(spare.si() < 0, Warning.Kind.NO_ROOM, ABOVE_FOLDED.id());
        });
        if (above.si() < 0) {
            out.limit(Limit.HEIGHT).warn(Warning.Kind.NO_ROOM, ABOVE.id());
        }
        if (beside.si() < 0) {
            out.limit(Limit.WIDTH).warn(Warning.Kind.NO_ROOM, BESIDE.id());
        }
    }

    private static void turning(Point in, Outcome out) {
        Length wheelbase = in.get(TractorParameters.WHEELBASE);
        Length radius = TurningSpace.radius(
                wheelbase, in.get(STEERING), in.get(TRACK), in.get(WIDTH), in.get(AHEAD));
        out.put(RADIUS, radius).put(ACROSS, new Length(2 * radius.si()));
        out.put(LENGTH, TurningSpace.length(wheelbase, in.get(AHEAD), in.get(BEHIND)));
    }
}
