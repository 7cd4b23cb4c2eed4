package fencerow.sizing.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.sizing.Caution;
import fencerow.sizing.OutOfRangeException;
import fencerow.sizing.Standing;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Area;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that every calculation in the catalogue keeps. */
class CalculationsTest {

    private static final String SLUG = "[a-z0-9]+(-[a-z0-9]+)*";
    private static final long SEED = 7_112_026L;

    /** Half a cent in each of 240 payments: sums of rounded payments do not rise quite steadily. */
    private static final double ROUNDED_PAYMENTS = 1.20;

    static List<Calculation> all() {
        return Calculations.all();
    }

    @Test
    void everyTopicHasCalculationsAndEveryIdIsItsOwn() {
        Set<String> ids = new HashSet<>();
        Calculations.all().forEach(each -> assertTrue(ids.add(each.id()), each.id()));
        assertTrue(ids.size() >= 40, () -> ids.size() + " calculations");
        for (Topic topic : Topic.values()) {
            assertFalse(Calculations.of(topic).isEmpty(), topic.id());
        }
        assertEquals(Calculations.get("loan"), Calculations.find("loan").orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> Calculations.get("weather"));
    }

    @ParameterizedTest
    @MethodSource("all")
    void idsAreSpeltAsIdsAndAreDistinct(Calculation calculation) {
        Set<String> parameters = new HashSet<>();
        calculation.parameters().forEach(each -> {
            assertTrue(each.id().matches(SLUG), each.id());
            assertTrue(parameters.add(each.id()), () -> calculation.id() + " asks twice for " + each.id());
        });
        Set<String> outputs = new HashSet<>();
        calculation.outputs().forEach(each -> {
            assertTrue(each.id().matches(SLUG), each.id());
            assertTrue(outputs.add(each.id()), () -> calculation.id() + " gives twice " + each.id());
        });
    }

    @ParameterizedTest
    @MethodSource("all")
    void namesItsSourceAndItsCautions(Calculation calculation) {
        Result result = calculation.run(Inputs.NONE);
        assertFalse(result.sources().isEmpty());
        assertFalse(result.cautions().isEmpty());
        assertTrue(result.sources().containsAll(calculation.sources()));
        assertTrue(result.cautions().containsAll(calculation.cautions()));
        assertTrue(result.amounts().size() + result.findings().size() > 0);
    }

    @ParameterizedTest
    @MethodSource("all")
    void presetsAreAllowedAndUsual(Calculation calculation) {
        for (Parameter parameter : calculation.parameters()) {
            if (parameter instanceof Measured<?> measured) {
                measured.preset().ifPresent(preset -> {
                    assertTrue(within(measured, preset.low()) && within(measured, preset.high()), measured.id());
                    assertTrue(measured.usual().contains(preset.low()), measured.id());
                    assertTrue(measured.usual().contains(preset.high()), measured.id());
                });
                assertTrue(measured.step().si() > 0 || measured.dimension() == Dimension.TEMPERATURE, measured.id());
            }
        }
    }

    private static boolean within(Measured<?> measured, Quantity value) {
        return value.si() >= measured.bounds().min().si() && value.si() <= measured.bounds().max().si();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyOutputHasItsDimension(Calculation calculation) {
        Result result = calculation.run(Inputs.NONE);
        for (Output output : calculation.outputs()) {
            result.findAmount(output.id())
                    .ifPresent(amount -> assertEquals(output.dimension(), amount.low().dimension(), output.id()));
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyChoiceRuns(Calculation calculation) {
        for (Parameter parameter : calculation.parameters()) {
            if (parameter instanceof Choice<?> choice) {
                choice.options().keySet().forEach(option -> {
                    Result result = calculation.run(Inputs.NONE.choosing(choice.id(), option));
                    assertEquals(option, result.choices().get(choice.id()));
                });
            }
        }
    }

    /** A range's ends hold the result of every value inside the range, so that no result is promised too narrowly. */
    @ParameterizedTest
    @MethodSource("all")
    void aRangeHoldsWhatItsValuesGive(Calculation calculation) {
        int compared = 0;
        for (int i = 0; i < 60; i++) {
            long seed = SEED + i;
            Random random = new Random(seed);
            Inputs range = Inputs.NONE;
            Inputs inside = Inputs.NONE;
            for (Parameter parameter : calculation.parameters()) {
                if (parameter instanceof Measured<?> measured && random.nextInt(3) == 0) {
                    double low = measured.usual().low().si();
                    double span = measured.usual().high().si() - low;
                    double a = low + span * random.nextDouble();
                    double b = a + (low + span - a) * random.nextDouble() / 2;
                    if (measured.dimension() == Dimension.COUNT) {
                        a = Math.rint(a);
                        b = Math.rint(b);
                    }
                    double within = a + (b - a) * random.nextDouble();
                    if (measured.dimension() == Dimension.COUNT) {
                        within = Math.rint(within);
                    }
                    range = range.with(measured.id(), Spread.of(amount(measured, a), amount(measured, b)));
                    inside = inside.with(measured.id(), amount(measured, within));
                }
            }
            compared += compare(calculation, range, inside, seed) ? 1 : 0;
        }
        assertTrue(compared >= 20, compared + " of 60 random inputs were accepted");
    }

    /** Whether the range was accepted, so that there was something to compare. */
    private static boolean compare(Calculation calculation, Inputs range, Inputs inside, long seed) {
        Result whole;
        try {
            whole = calculation.run(range);
        } catch (IllegalArgumentException refused) {
            return false;
        }
        Map<String, Spread<Amount>> point = calculation.run(inside).amounts();
        point.forEach((id, amount) -> {
            Spread<Amount> held = whole.getAmount(id);
            double slack = 1e-9 * (1 + Math.abs(held.high().si()) + Math.abs(held.low().si()));
            double cents = amount.low().dimension() == Dimension.MONEY ? ROUNDED_PAYMENTS : 0;
            assertTrue(amount.low().si() >= held.low().si() - slack - cents
                            && amount.high().si() <= held.high().si() + slack + cents,
                    () -> "seed " + seed + ": " + id + " is " + amount + ", the range gave " + held + " for "
                            + range + " and " + inside);
        });
        return true;
    }

    private static Amount amount(Measured<?> measured, double si) {
        return new Amount(measured.dimension(), si);
    }

    @ParameterizedTest
    @MethodSource("all")
    void refusesValuesOutsideItsBoundsByName(Calculation calculation) {
        for (Parameter parameter : calculation.parameters()) {
            if (parameter instanceof Measured<?> measured) {
                double above = measured.bounds().max().si() * 1.01 + 1;
                Inputs inputs = Inputs.NONE.with(measured.id(), amount(measured, above));
                OutOfRangeException refused =
                        assertThrows(OutOfRangeException.class, () -> calculation.run(inputs), measured.id());
                assertEquals(measured.id(), refused.what());
                assertTrue(refused.getMessage().contains("give "), refused.getMessage());
            }
        }
    }

    @Test
    void refusesWhatItDoesNotAskFor() {
        Calculation loan = Calculations.get("loan");
        IllegalArgumentException unknown = assertThrows(IllegalArgumentException.class,
                () -> loan.run(Inputs.NONE.with("width", Length.ofFeet(5))));
        assertTrue(unknown.getMessage().contains("[width]") && unknown.getMessage().contains("payments"));
        assertThrows(IllegalArgumentException.class, () -> loan.run(Inputs.NONE.choosing("rate", "low")));
        assertThrows(IllegalArgumentException.class,
                () -> Calculations.get("work-time").run(Inputs.NONE.choosing("machine", "scythe")));
        assertThrows(IllegalArgumentException.class,
                () -> Calculations.get("work-time").run(Inputs.NONE.with("area", Mass.ofPounds(3))));
    }

    @Test
    void warnsOfTheUnusualAndGoesOn() {
        Result result = Calculations.get("work-time").run(Inputs.NONE.with("area", Area.ofAcres(900)));
        assertEquals(List.of(new Warning(Warning.Kind.UNUSUAL_INPUT, "area")), result.warnings());
        assertTrue(result.getAmount("time").low().si() > 0);
    }

    @Test
    void aResultSaysWhatItTookWhereNothingWasGiven() {
        Result result = Calculations.get("work-time").run(Inputs.NONE.choosing("machine", "rotary-cutter"));
        assertEquals("rotary-cutter", result.choices().get("machine"));
        Spread<Amount> speed = result.inputs().get("speed");
        assertEquals(2, speed.low().si() / 0.44704, 1e-9);
        assertEquals(5, speed.high().si() / 0.44704, 1e-9);
        assertFalse(result.getAmount("time").isExact());
    }

    @Test
    void tooManyRangesAreRefused() {
        Calculation payload = Calculations.get("loader-payload");
        Inputs inputs = Inputs.NONE;
        List<String> ranged = new ArrayList<>();
        for (Parameter parameter : payload.parameters()) {
            if (parameter instanceof Measured<?> measured && measured.preset().isPresent()) {
                double low = measured.preset().get().low().si();
                double high = low + measured.step().si();
                inputs = inputs.with(measured.id(), Spread.of(amount(measured, low), amount(measured, high)));
                ranged.add(measured.id());
            }
        }
        Inputs many = inputs;
        assertTrue(ranged.size() > Calculation.MOST_RANGES);
        assertThrows(IllegalArgumentException.class, () -> payload.run(many));
    }

    /** Poison and rust are cautioned where the chosen liquid has them, and only there. */
    @Test
    void cautionsFollowTheChosenLiquid() {
        Calculation fluid = Calculations.get("tire-fluid");
        List<Caution> washer = fluid.run(Inputs.NONE.choosing("fluid", "washer-fluid")).cautions();
        List<Caution> beet = fluid.run(Inputs.NONE.choosing("fluid", "beet-juice")).cautions();
        List<Caution> chloride = fluid.run(Inputs.NONE.choosing("fluid", "calcium-chloride-5")).cautions();
        assertTrue(washer.contains(Caution.FLUID_POISON) && !beet.contains(Caution.FLUID_POISON));
        assertTrue(chloride.contains(Caution.FLUID_CORROSION) && !beet.contains(Caution.FLUID_CORROSION));
    }

    /** The trade's own figures are never passed off as published ones. */
    @Test
    void commonPracticeIsNamedAsSuch() {
        Result result = Calculations.get("resale-return").run(Inputs.NONE);
        assertEquals(Standing.COMMON_PRACTICE, result.sources().get(0).standing());
    }
}
