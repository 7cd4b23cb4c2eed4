package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.sizing.Axles;
import fencerow.sizing.LiftAtDistance;
import fencerow.sizing.LoaderPayload;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Threshold;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What loads and tools ask of a machine, against the formulas they are printed by. */
class LevelsTest {
    private static final long SEED = 20260301;
    /** Half the depth of a 48 in pallet; common practice, no source. */
    private static final double CENTER = 0.6096;
    private static final double RATED = 0.5;
    /** 24 in behind the link ends, where hitch lift is rated. */
    private static final double BEHIND_ENDS = 0.61;
    /** Front weights hang 20 in ahead of the axle; common practice, no source. */
    private static final double WEIGHTS_AHEAD = 0.508;

    private static Model model(double front, double rear, double wheelbase, double reach, double overhang) {
        return Yard.unit()
                .figure(Figure.FRONT_AXLE_MASS, front)
                .figure(Figure.REAR_AXLE_MASS, rear)
                .figure(Figure.WHEELBASE, wheelbase)
                .figure(Figure.LOADER_REACH, reach)
                .figure(Figure.HITCH_OVERHANG, overhang)
                .figure(Figure.LOADER_LIFT_PINS, 1000)
                .figure(Figure.LOADER_LIFT, 750)
                .make()
                .model();
    }

    private static Amount kilograms(double kilograms) {
        return new Amount(Dimension.MASS, kilograms);
    }

    /** Lift by the arms' lever: 1/F lies on a line between the two ratings. */
    @Test
    void loadAtItsOwnCenterAsksForMoreThanItsMassAtTheRatedDistance() {
        double atCenter = 1 / (1 / 1000.0 + (1 / 750.0 - 1 / 1000.0) * CENTER / RATED);

        Amount rating = Levels.on(model(500, 900, 1.6, 0.8, 0.6), new Threshold.Payload(kilograms(400)));

        assertEquals(400 * 750 / atCenter, rating.si(), 1e-6);
    }

    @Test
    void modelWhoseSheetLacksTheRatingsIsAskedForTheLoadItself() {
        Amount rating = Levels.on(Yard.unit().make().model(), new Threshold.Payload(kilograms(400)));

        assertEquals(400, rating.si(), 1e-9);
    }

    /** With what both ask for, none of the three rules of loader payload stops the load; with less behind, one does. */
    @Test
    void ratingAndWeightBehindTogetherAreJustWhatTheLoadNeeds() {
        var random = new Random(SEED);
        int light = 0;
        for (int n = 0; n < 200; n++) {
            double front = 300 + random.nextInt(400);
            double rear = 400 + random.nextInt(600);
            double reach = 0.5 + random.nextDouble();
            double overhang = 0.5 + random.nextDouble() / 2;
            double load = 100 + random.nextInt(500);
            Model model = model(front, rear, 1.4 + random.nextDouble(), reach, overhang);
            var bare = new Axles(new Mass(front), new Mass(rear),
                    new Length(model.findFigure(Figure.WHEELBASE).orElseThrow().si()));
            double weight = Levels.on(model, new Threshold.Counterweight(kilograms(load))).si();
            double rating = Levels.on(model, new Threshold.Payload(kilograms(load))).si();
            LiftAtDistance lift = LiftAtDistance.fromRatings(
                    new Mass(rating * 1000 / 750), new Mass(rating), new Length(RATED));

            assertEquals(load, lift.at(new Length(CENTER)).si(), 1e-6, "seed " + SEED + ", case " + n);
            assertTrue(usable(lift, bare, weight, reach, overhang) >= load - 1e-6, "seed " + SEED + ", case " + n);
            if (weight > 1) {
                light++;
                assertTrue(usable(lift, bare, weight - 1, reach, overhang) < load, "seed " + SEED + ", case " + n);
            }
        }
        assertTrue(light > 50, light + " cases ask for weight");
    }

    private static double usable(LiftAtDistance lift, Axles bare, double weight, double reach, double overhang) {
        Axles ballasted = bare.withBehind(new Mass(weight), new Length(overhang + BEHIND_ENDS));
        return LoaderPayload.of(lift, ballasted, bare.total(), new Length(reach), new Length(CENTER)).usable().si();
    }

    /** As printed in implement manuals: GVmin = [GH (c + d) - TV b + 0.2 TL b] / (a + b). */
    @Test
    void toolRaisedBehindAsksForTheFrontWeightOfThePrintedFormula() {
        double behind = 0.6 + BEHIND_ENDS;
        double printed = (350 * behind - 400 * 1.6 + 0.2 * 1000 * 1.6) / (WEIGHTS_AHEAD + 1.6);

        Amount heavy = Levels.on(model(400, 600, 1.6, 0.8, 0.6), new Threshold.SteeringWeight(kilograms(350)));
        Amount easy = Levels.on(model(400, 600, 1.6, 0.8, 0.6), new Threshold.SteeringWeight(kilograms(100)));

        assertEquals(printed, heavy.si(), 1e-6);
        assertEquals(0, easy.si(), 1e-9);
    }

    /**
     * Field capacity in acres an hour is speed in mph times width in feet times efficiency over 8.25 (ASABE EP496; from
     * memory), so two acres in an hour at 4 mph and 70 % take 8.25 * 2 / (4 * 0.7) ft. Speed and efficiency of a lawn
     * mower among beds and trees: common practice, no source.
     */
    @Test
    void lawnAsksForTheWidthThatMowsItInTheTimeWhateverTheModel() {
        double acre = 4046.8564224;
        double width = 8.25 * 2 / (4 * 0.7) * 0.3048;
        var mowing = new Threshold.MowingWidth(
                new Amount(Dimension.AREA, 2 * acre), new Amount(Dimension.TIME, 3600));

        assertEquals(width, Levels.on(Yard.unit().make().model(), mowing).si(), 1e-3);
        assertEquals(width, Levels.findOnAny(mowing).orElseThrow().si(), 1e-3);
    }

    @Test
    void whatDependsOnTheModelIsNotTheSameOnAny() {
        assertTrue(Levels.findOnAny(new Threshold.Payload(kilograms(400))).isEmpty());
        assertTrue(Levels.findOnAny(new Threshold.Counterweight(kilograms(400))).isEmpty());
        assertTrue(Levels.findOnAny(new Threshold.SteeringWeight(kilograms(400))).isEmpty());
    }

    /** A loader never lifts more half a metre out than at its pins; a sheet that says so has a mistake in it. */
    @Test
    void sheetThatCannotBeIsAskedForTheLoadItself() {
        Model wrong = Yard.unit()
                .figure(Figure.LOADER_LIFT_PINS, 700)
                .figure(Figure.LOADER_LIFT, 750)
                .make()
                .model();

        assertEquals(400, Levels.on(wrong, new Threshold.Payload(kilograms(400))).si(), 1e-9);
    }

    @Test
    void modelWhoseSheetLacksAFigureIsAskedForNoWeight() {
        Model blank = Yard.unit().make().model();

        assertEquals(0, Levels.on(blank, new Threshold.Counterweight(kilograms(400))).si(), 1e-9);
        assertEquals(0, Levels.on(blank, new Threshold.SteeringWeight(kilograms(400))).si(), 1e-9);
    }
}
