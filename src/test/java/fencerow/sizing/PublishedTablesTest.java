package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Mass;
import fencerow.terms.Power;
import fencerow.terms.Temperature;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Compares every cell of the published tables; each row names where it was read. */
class PublishedTablesTest {

    private static final double EXACT = 1e-9;

    private static <E> E of(E[] all, Function<E, String> id, String wanted) {
        return Arrays.stream(all).filter(each -> id.apply(each).equals(wanted)).findFirst().orElseThrow();
    }

    /** Gallons: a retailer's tire fill chart. Weights of water follow from them; mixes are 20 and 28 % heavier. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "tire-fills.csv", numLinesToSkip = 1)
    void tireFill(ArgumentsAccessor row) {
        TireSize size = TireSize.find(row.getString(0)).orElseThrow();
        assertFalse(size.estimated());
        assertEquals(row.getDouble(1), size.fill().toUsGallons(), EXACT, "gallons");
        assertEquals(row.getDouble(2), size.fill().toLiters(), 0.5, "liters");
        assertFluid(row, 3, TireFluid.mass(size, Fluid.WATER, 1));
        assertEquals(row.getDouble(5), TireFluid.mass(size, Fluid.CALCIUM_CHLORIDE_3_5, 1).toPounds(),
                1 + 0.01 * row.getDouble(5), "3.5 lb mix");
        assertEquals(row.getDouble(7), TireFluid.mass(size, Fluid.CALCIUM_CHLORIDE_5, 1).toPounds(),
                1 + 0.01 * row.getDouble(7), "5 lb mix");
        assertEquals(row.getDouble(9), TireFluid.mass(size, Fluid.BEET_JUICE, 1).toPounds(), 0.5, "beet juice");
        assertEquals(row.getDouble(10), TireFluid.mass(size, Fluid.WASHER_FLUID, 1).toPounds(), 0.51, "washer fluid");
    }

    private static void assertFluid(ArgumentsAccessor row, int column, Mass mass) {
        assertEquals(row.getDouble(column), mass.toPounds(), 0.6, "pounds");
        assertEquals(row.getDouble(column + 1), mass.toKilograms(), 0.6, "kilograms");
    }

    @Test
    void allChartedTireSizesAreInTheChart() {
        assertEquals(23, TireSize.all().stream().filter(size -> !size.estimated()).count());
        assertEquals(15, TireSize.all().stream().filter(TireSize::estimated).count());
    }

    /** 49 CFR 393.108, tables to the section. */
    @ParameterizedTest(name = "{0} in")
    @CsvFileSource(resources = "working-load-limits.csv", numLinesToSkip = 1)
    void chainAndWireRope(ArgumentsAccessor row) {
        List<String> kinds = List.of("chain-g30", "chain-g43", "chain-g70", "chain-g80", "chain-g100", "wire-rope");
        for (int i = 0; i < kinds.size(); i++) {
            String kind = kinds.get(i);
            if (row.get(i + 1) == null) {
                assertTrue(WorkingLoadLimit.find(kind, row.getString(0)).isEmpty(), kind);
            } else {
                double limit = WorkingLoadLimit.find(kind, row.getString(0)).orElseThrow().limit().toPounds();
                assertEquals(row.getDouble(i + 1), limit, EXACT, kind);
            }
        }
    }

    /** 49 CFR 393.108, tables to the section. */
    @ParameterizedTest(name = "{0} in webbing")
    @CsvSource({"1-3/4, 1750", "2, 2000", "3, 3000", "4, 4000"})
    void webbing(String size, double pounds) {
        assertEquals(pounds, WorkingLoadLimit.find("webbing", size).orElseThrow().limit().toPounds(), EXACT);
    }

    @Test
    void theWorkingLoadTableHasNoOtherRows() {
        assertEquals(6 * 4 + 5 * 2 + 4, WorkingLoadLimit.all().size());
    }

    /** Printed so: 5/16 in chain of grade 80 below grade 70. */
    @Test
    void grade80BelowGrade70AtFiveSixteenths() {
        assertTrue(limit("chain-g80", "5/16") < limit("chain-g70", "5/16"));
    }

    private static double limit(String kind, String size) {
        return WorkingLoadLimit.find(kind, size).orElseThrow().limit().si();
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "bulk-densities.csv", numLinesToSkip = 1)
    void bulkDensity(String id, double low, double high, String source) {
        Material material = of(Material.values(), Material::id, id);
        assertEquals(low, material.density().low().toPoundsPerCubicYard(), EXACT, source);
        assertEquals(high, material.density().high().toPoundsPerCubicYard(), EXACT, source);
        assertEquals(source.contains("from memory"), material.source().standing() == Standing.FROM_MEMORY);
    }

    /** Pounds a cord: a state energy office and an engineering table, as quoted. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "firewood.csv", numLinesToSkip = 1)
    void cordOfFirewood(String id, double dryLow, double dryHigh, double greenLow, double greenHigh) {
        Firewood wood = of(Firewood.values(), Firewood::id, id);
        assertEquals(dryLow, wood.dryCord().low().toPounds(), EXACT);
        assertEquals(dryHigh, wood.dryCord().high().toPounds(), EXACT);
        assertEquals(greenLow, wood.greenCord().low().toPounds(), EXACT);
        assertEquals(greenHigh, wood.greenCord().high().toPounds(), EXACT);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "field-machines.csv", numLinesToSkip = 1)
    void speedAndEfficiency(ArgumentsAccessor row) {
        FieldMachine machine = of(FieldMachine.values(), FieldMachine::id, row.getString(0));
        assertEquals(row.getDouble(1), machine.efficiency().low().toPercent(), EXACT);
        assertEquals(row.getDouble(2), machine.efficiency().high().toPercent(), EXACT);
        assertEquals(row.getDouble(3), machine.typicalEfficiency().toPercent(), EXACT);
        assertEquals(row.getDouble(4), machine.speed().low().toMph(), EXACT);
        assertEquals(row.getDouble(5), machine.speed().high().toMph(), EXACT);
        assertEquals(row.getDouble(6), machine.typicalSpeed().toMph(), EXACT);
        assertTrue(machine.efficiency().contains(machine.typicalEfficiency()));
        assertTrue(machine.speed().contains(machine.typicalSpeed()));
    }

    /** Three-point hitch categories: an open encyclopedia table. */
    @ParameterizedTest(name = "category {0}")
    @CsvFileSource(resources = "hitch-categories.csv", numLinesToSkip = 1)
    void hitchCategory(String id, double low, double high, double top, double lower, double spread) {
        HitchCategory category = of(HitchCategory.values(), HitchCategory::id, id);
        assertEquals(low, category.power().low().toHorsepower(), EXACT);
        assertEquals(high, category.power().high().toHorsepower(), EXACT);
        assertEquals(top, category.topPin().toInches(), EXACT);
        assertEquals(lower, category.lowerPin().toInches(), EXACT);
        assertEquals(spread, category.lowerSpread().toInches(), EXACT);
        assertTrue(HitchCategory.forPower(Power.ofHorsepower((low + high) / 2)).contains(category));
    }

    /** ISO 730, from memory: mast heights, and 1N with the pins of 1. */
    @ParameterizedTest(name = "category {0}")
    @CsvSource({"1, 460", "1n, 360", "2, 610", "0, 305", "3, 685"})
    void hitchMast(String id, double millimeters) {
        assertEquals(millimeters, of(HitchCategory.values(), HitchCategory::id, id).mast().toMillimeters(), EXACT);
        assertEquals(HitchCategory.CATEGORY_1.lowerPin(), HitchCategory.CATEGORY_1N.lowerPin());
        assertEquals(HitchCategory.CATEGORY_1.topPin(), HitchCategory.CATEGORY_1N.topPin());
    }

    /** ISO 500-1 types by an open table; the mid shaft from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "type-1, 540, 1.375, 6", "type-2, 1000, 1.375, 21", "type-3, 1000, 1.75, 20",
        "type-4, 1300, 2.263779527559055, 22", "mid, 2000, 1, 15"
    })
    void ptoType(String id, int rpm, double inches, int splines) {
        PtoType type = of(PtoType.values(), PtoType::id, id);
        assertEquals(rpm, type.rpm());
        assertEquals(inches, type.shaft().toInches(), EXACT);
        assertEquals(splines, type.splines());
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "fluids.csv", numLinesToSkip = 1)
    void fluid(String id, double poundsPerGallon, double tolerance, double slush, double solid, String source) {
        Fluid fluid = of(Fluid.values(), Fluid::id, id);
        assertEquals(poundsPerGallon, fluid.density().toPoundsPerGallon(), tolerance, source);
        assertEquals(slush, fluid.slushPoint().toFahrenheit(), 1e-6, source);
        assertEquals(solid, fluid.solidPoint().toFahrenheit(), 1e-6, source);
        assertTrue(fluid.staysLiquidAt(Temperature.ofFahrenheit(slush + 1)));
        assertFalse(fluid.staysLiquidAt(Temperature.ofFahrenheit(slush - 1)));
    }

    /** Slush-free and solid points in both scales as a tractor operator's manual prints them. */
    @ParameterizedTest
    @CsvSource({"14, -10", "-22, -30", "-11, -24", "-52, -47", "-62, -52"})
    void freezePointsInBothScales(double fahrenheit, double celsius) {
        assertEquals(celsius, Temperature.ofFahrenheit(fahrenheit).toCelsius(), 0.5);
    }

    /** Cylinder drift limits: service manuals of a wheel loader, three compact loaders and an army excavator. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "wheel-loader, 13, 5", "wheel-loader-120-f, 13, 2.7", "wheel-loader-150-f, 13, 1.7",
        "compact-loader-small, 28.4, 15", "compact-loader-medium, 23.3, 15", "compact-loader-large, 22.1, 15",
        "compact-tilt-small, 40.9, 15", "compact-tilt-medium, 33.5, 15", "compact-tilt-large, 26.4, 15",
        "excavator, 20, 5"
    })
    void cylinderDrift(String id, double millimeters, double minutes) {
        CylinderDrift drift = of(CylinderDrift.values(), CylinderDrift::id, id);
        assertEquals(millimeters, drift.limit().toMillimeters(), EXACT);
        assertEquals(minutes, drift.in().toMinutes(), EXACT);
    }

    /** SAE J684 (July 2005) classes, as tabulated. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"class-1, 2000", "class-2, 3500", "class-3, 5000", "class-4, 10000"})
    void trailerHitch(String id, double pounds) {
        TrailerHitch hitch = of(TrailerHitch.values(), TrailerHitch::id, id);
        assertEquals(pounds, hitch.rating().toPounds(), EXACT);
        assertEquals(hitch, TrailerHitch.forGross(Mass.ofPounds(pounds)).orElseThrow());
    }

    /** Tread guides: R4 about 70 % of R1, R1W about 20 % deeper, R2 about twice; R1 about 1.5 in. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"r1, 1, 1.5", "r1w, 1.2, 1.8", "r2, 2, 3", "r4, 0.7, 1.05"})
    void tread(String id, double share, double inches) {
        TireTread tread = of(TireTread.values(), TireTread::id, id);
        assertEquals(share, tread.againstR1().toFraction(), EXACT);
        assertEquals(inches, tread.newDepth().toInches(), EXACT);
    }

    /** Snow: 6.2 lb/ft3 on average by the National Weather Service; 30 to 50 % of water once settled or wet. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"new-dry, 3.1, 85", "fresh-average, 6.2, 168", "settled, 18.7, 500", "heavy-wet, 24.8, 670"})
    void snowDensity(String id, double poundsPerCubicFoot, double poundsPerCubicYard) {
        SnowDensity snow = of(SnowDensity.values(), SnowDensity::id, id);
        assertEquals(poundsPerCubicFoot, snow.density().toPoundsPerCubicFoot(), EXACT);
        assertEquals(poundsPerCubicYard, snow.density().toPoundsPerCubicYard(), 5);
    }
}
