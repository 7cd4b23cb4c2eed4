package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class AxlesTest {

    /**
     * A tractor of 2,100 lb, its center of gravity 20 in ahead of the rear axle, wheelbase 60 in, carries 900 lb 50 in
     * ahead of the front axle: 325 lb on each rear wheel, 1,175 lb on each front one. Statics textbook exercise, from
     * memory; re-computed.
     */
    @Test
    void textbookTractorWithLoadedBucket() {
        Axles bare = Axles.fromCenterOfGravity(Mass.ofPounds(2100), Length.ofInches(20), Length.ofInches(60));
        Axles loaded = bare.withAhead(Mass.ofPounds(900), Length.ofInches(50));
        assertEquals(325, loaded.rear().toPounds() / 2, 1e-9);
        assertEquals(1175, loaded.front().toPounds() / 2, 1e-9);
    }

    /** 1,600 lb with the center 62.5 % of the wheelbase behind the front axle: 600 and 1,000 lb. A forum's example. */
    @Test
    void shareOfAnUnladenTractor() {
        Axles bare = Axles.fromCenterOfGravity(Mass.ofPounds(1600), Length.ofInches(22.5), Length.ofInches(60));
        assertEquals(600, bare.front().toPounds(), 1e-9);
        assertEquals(1000, bare.rear().toPounds(), 1e-9);
    }

    /**
     * Against the equations of statics, solved by a general linear algebra library: moments about a far point and the
     * sum of forces, for the tractor's own weight, a load in front, one in the wheels and one behind.
     */
    @Test
    void equalsTheSolutionOfTheEquationsOfStatics() {
        Draws.forAll(draws -> {
            double b = draws.between(1.2, 2.5);
            double own = draws.between(500, 3000);
            double ownAhead = draws.between(0.1, 0.9) * b;
            double[] load = {draws.between(0, 800), draws.between(0, 400), draws.between(0, 800)};
            double[] at = {b + draws.between(0, 1.5), 0, -draws.between(0.5, 2)};
            double moments = own * (ownAhead + 10);
            double weight = own;
            for (int i = 0; i < load.length; i++) {
                moments += load[i] * (at[i] + 10);
                weight += load[i];
            }
            RealVector reactions = new LUDecomposition(
                            new Array2DRowRealMatrix(new double[][] {{1, 1}, {b + 10, 10}}))
                    .getSolver()
                    .solve(new ArrayRealVector(new double[] {weight, moments}));
            Axles axles = Axles.fromCenterOfGravity(new Mass(own), new Length(ownAhead), new Length(b))
                    .withAhead(new Mass(load[0]), new Length(at[0] - b))
                    .withBehind(new Mass(load[1]), new Length(0))
                    .withBehind(new Mass(load[2]), new Length(-at[2]));
            assertEquals(reactions.getEntry(0), axles.front().si(), 1e-7);
            assertEquals(reactions.getEntry(1), axles.rear().si(), 1e-7);
        });
    }

    @Test
    void aLoadAheadIsALoadBehindCountedFromTheOtherAxle() {
        Draws.forAll(draws -> {
            Axles bare = draws.axles();
            Mass load = draws.kilograms(10, 500);
            Length behind = draws.meters(0, 2);
            Length ahead = new Length(-bare.wheelbase().si() - behind.si());
            assertEquals(bare.withBehind(load, behind).front().si(), bare.withAhead(load, ahead).front().si(), 1e-9);
            assertEquals(bare.withBehind(load, behind).rear().si(), bare.withAhead(load, ahead).rear().si(), 1e-9);
        });
    }

    /** Hitch weight relieves the front axle; weight in the wheels leaves it as it is. */
    @Test
    void onlyHitchWeightRelievesTheFrontAxle() {
        Axles bare = new Axles(Mass.ofKilograms(620), Mass.ofKilograms(830), Length.ofMeters(1.7));
        Mass load = Mass.ofKilograms(100);
        assertEquals(620, bare.withBehind(load, new Length(0)).front().si(), 1e-9);
        assertEquals(930, bare.withBehind(load, new Length(0)).rear().si(), 1e-9);
        assertEquals(620 - 100 * 1.4 / 1.7, bare.withBehind(load, Length.ofMeters(1.4)).front().si(), 1e-9);
        assertEquals(830 + 100 * 3.1 / 1.7, bare.withBehind(load, Length.ofMeters(1.4)).rear().si(), 1e-9);
    }

    /** A two-wheel-drive tractor's center about 2 ft ahead of the rear axle gives about 30 % in front (extension). */
    @Test
    void usualSplitOfTwoWheelDriveHoldsTheExtensionFigure() {
        Axles bare = Axles.fromCenterOfGravity(Mass.ofPounds(4000), Length.ofFeet(2), Length.ofInches(80));
        assertEquals(0.30, bare.frontShare().si(), 0.001);
        assertTrue(WeightSplit.TWO_WHEEL_DRIVE.frontShare().contains(bare.frontShare()));
    }

    /** About one third in front with two driven wheels, 40 to 45 % with four: a small tractor's operator's manual. */
    @Test
    void usualSplitOfAnUnpublishedTractor() {
        assertTrue(WeightSplit.TWO_WHEEL_DRIVE.frontShare().contains(Ratio.ofFraction(1 / 3.0)));
        Axles four = WeightSplit.FOUR_WHEEL_DRIVE.axles(Mass.ofPounds(3000), Length.ofInches(65));
        assertEquals(0.425, four.frontShare().si(), 1e-12);
        assertEquals(3000, four.total().toPounds(), 1e-9);
    }

    @Test
    void refusesAWheelbaseThatIsNone() {
        Mass half = Mass.ofKilograms(500);
        assertThrows(OutOfRangeException.class, () -> new Axles(half, half, Length.ofInches(6)));
        assertThrows(OutOfRangeException.class,
                () -> Axles.fromCenterOfGravity(half, Length.ofMeters(2), Length.ofMeters(1.7)));
    }
}
