package fencerow.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Amount;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Round amounts along an axis. */
class TicksTest {
    private static final Quantities US = new Quantities(Locale.US, false);
    private static final Quantities METRIC = new Quantities(Locale.US, true);

    private static List<String> words(Amount low, Amount high, int most, Quantities shown) {
        return Ticks.of(Spread.of(low, high), most, shown).stream()
                .map(tick -> tick.words().replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void poundsAreRoundInPoundsAndKilogramsInKilograms() {
        assertEquals(List.of("0 lb", "500 lb", "1,000 lb", "1,500 lb", "2,000 lb"),
                words(Mass.ofPounds(0).amount(), Mass.ofPounds(2000).amount(), 5, US));
        assertEquals(List.of("0 kg", "500 kg"),
                words(Mass.ofPounds(0).amount(), Mass.ofPounds(2000).amount(), 5, METRIC));
    }

    @Test
    void anAxisThatBeginsBetweenRoundAmountsHasItsFirstTickInside() {
        assertEquals(List.of("20 in", "40 in", "60 in"),
                words(Length.ofInches(13).amount(), Length.ofInches(61).amount(), 4, US));
    }

    @Test
    void anAxisWithoutLengthHasNoTicks() {
        assertEquals(List.of(), words(Mass.ofPounds(500).amount(), Mass.ofPounds(500).amount(), 5, US));
    }

    @Test
    void thereAreNeverMoreThanAskedForAllWithinTheRangeAndEvenlyApart() {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double low = random.nextDouble() * 3000;
            double high = low + Math.pow(10, random.nextDouble() * 4);
            int most = 2 + random.nextInt(8);
            Spread<Amount> range = Spread.of(Mass.ofPounds(low).amount(), Mass.ofPounds(high).amount());
            List<Ticks.Tick> ticks = Ticks.of(range, most, US);
            String told = "seed " + seed + ", " + low + " to " + high + ", " + most + ": " + ticks;
            assertTrue(ticks.size() <= most, told);
            double slack = 1e-3 * (high - low);
            List<Double> steps = new ArrayList<>();
            for (int t = 0; t < ticks.size(); t++) {
                double at = ticks.get(t).at().si();
                assertTrue(at >= range.low().si() - slack && at <= range.high().si() + slack, told);
                if (t > 0) {
                    steps.add(at - ticks.get(t - 1).at().si());
                }
            }
            for (double step : steps) {
                assertEquals(steps.get(0), step, 1e-6 * step, told);
            }
        }
    }
}
