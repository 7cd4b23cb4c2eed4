package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Area;
import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.Ratio;
import fencerow.terms.Volume;
import org.junit.jupiter.api.Test;

class BucketVolumeTest {

    /** The heap's height is half the distance to the nearest edge (1 up, 2 along); summed over a fine grid. */
    @Test
    void heapIsTheVolumeUnderSlopesOfOneToTwo() {
        double w = 1.5;
        double b = 0.6;
        int n = 600;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = (i + 0.5) * w / n;
                double y = (j + 0.5) * b / n;
                sum += Math.min(Math.min(x, w - x), Math.min(y, b - y)) / 2;
            }
        }
        double heap = BucketVolume.heap(Length.ofMeters(w), Length.ofMeters(b)).si();
        assertEquals(sum * w * b / n / n, heap, 1e-5);
    }

    /** Rated volume is struck volume and heap: definitions of ISO 7546 (preview of AS ISO 7546:2021). */
    @Test
    void ratedIsStruckAndHeap() {
        Area end = Area.ofSquareFeet(1.6);
        Length width = Length.ofInches(60);
        Length depth = Length.ofInches(20);
        double struck = BucketVolume.struck(end, width).toCubicFeet();
        assertEquals(8, struck, 1e-9);
        assertEquals(struck + 2666.6667 / 1728, BucketVolume.rated(end, width, depth).toCubicFeet(), 1e-5);
    }

    @Test
    void aBucketfulWeighsVolumeTimesDensityTimesFill() {
        Volume yard = Volume.ofCubicYards(1);
        Density gravel = Material.GRAVEL_DRY.density().low();
        assertEquals(2340, BucketVolume.mass(yard, gravel, Ratio.ofPercent(90)).toPounds(), 1e-6);
    }

    @Test
    void refusesAHeapDeeperThanWide() {
        assertThrows(OutOfRangeException.class, () -> BucketVolume.heap(Length.ofFeet(2), Length.ofFeet(3)));
    }

    /** A full pallet of 60 mm pavers, 100 ft2 x 2.375 in x 140 lb/ft3, lies in the trade's range (no source). */
    @Test
    void paverPalletIsWhatItsStonesWeigh() {
        double pounds = 100 * 2.375 / 12 * 140;
        assertEquals(2771, pounds, 1);
        assertTrue(UsualLoad.PAVER_PALLET.mass().low().toPounds() < pounds);
        assertTrue(UsualLoad.PAVER_PALLET.mass().high().toPounds() > pounds);
    }

    /** Loads of known size agree with their bulletin: Bale Weight, E-319; a quarter of a cord of red oak. */
    @Test
    void commonLoadsAgreeWithTheirTables() {
        double bale4 = RoundBale.mass(Length.ofFeet(4), Length.ofFeet(4), RoundBale.TYPICAL).toPounds();
        double bale5 = RoundBale.mass(Length.ofFeet(5), Length.ofFeet(5), RoundBale.TYPICAL).toPounds();
        assertEquals(bale4, UsualLoad.ROUND_BALE_4_BY_4.mass().low().toPounds(), 1);
        assertEquals(bale5, UsualLoad.ROUND_BALE_5_BY_5.mass().low().toPounds(), 1);
        UsualLoad wood = UsualLoad.FIREWOOD_QUARTER_CORD;
        assertEquals(Firewood.RED_OAK.dryCord().low().toPounds() / 4, wood.mass().low().toPounds(), 1);
        assertEquals(Firewood.RED_OAK.greenCord().high().toPounds() / 4, wood.mass().high().toPounds(), 1);
        assertEquals(30, UsualLoad.ROUND_BALE_5_BY_5.center().toInches(), 1e-9);
    }
}
