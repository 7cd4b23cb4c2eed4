package fencerow.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Dimension;
import fencerow.terms.UnitOfMeasure;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TradeUnitsTest {

    /** Our own factors against the units library's (JSR-385: Indriya with the US customary system). */
    @ParameterizedTest
    @EnumSource(UnitOfMeasure.class)
    void ourConversionIsTheLibrarys(UnitOfMeasure unit) {
        assertEquals(unit != UnitOfMeasure.US_DOLLAR, TradeUnits.knows(unit));
        Random random = new Random(385);
        for (int i = 0; i < 50; i++) {
            double value = random.nextDouble() * 1000 - 100;
            double si = unit.toSi(value);
            assertEquals(TradeUnits.toSi(unit, value), si, 1e-12 * (1 + Math.abs(si)), () -> "seed 385: " + value);
            assertEquals(TradeUnits.fromSi(unit, si), unit.fromSi(si), 1e-9, () -> "seed 385: " + si);
        }
    }

    @ParameterizedTest
    @EnumSource(UnitOfMeasure.class)
    void everyUnitIsReadAsItIsShown(UnitOfMeasure unit) {
        String symbol = UnitSpelling.symbol(unit, Locale.US);
        assertEquals(Optional.of(unit), UnitSpelling.find(symbol, unit.dimension()));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionNamesItsUnits(Dimension dimension) {
        boolean plain = dimension == Dimension.COUNT;
        assertEquals(plain, UnitSpelling.allowed(dimension).isEmpty());
        assertFalse(UnitSpelling.find("furlong", dimension).isPresent());
        assertTrue(UnitSpelling.findDimension("gpm").equals(Optional.of(Dimension.FLOW)));
    }
}
