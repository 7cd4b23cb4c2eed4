package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.stock.Attachment;
import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.stock.Model;
import fencerow.terms.CapabilityId;
import fencerow.terms.Figure;
import fencerow.terms.MachineClass;
import fencerow.terms.Threshold;
import fencerow.terms.UnitOfMeasure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The invented models' figures against what is usual for their class, and against one another. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShippedModelsTest {
    private List<Model> models = List.of();
    private List<Item> items = List.of();

    @BeforeAll
    void read() {
        Catalogue catalogue = ShippedContent.get().showroom().catalogue();
        models = List.copyOf(catalogue.models());
        items = List.copyOf(catalogue.items());
        assertTrue(models.size() >= 20, () -> "only " + models.size() + " models");
    }

    private static double si(Model model, Figure figure) {
        return model.findFigure(figure)
                .orElseThrow(() -> new AssertionError(model.id() + " has no " + figure.id()))
                .si();
    }

    private List<Model> of(MachineClass machineClass) {
        return models.stream().filter(model -> model.machineClass() == machineClass).toList();
    }

    private static void assertBetween(double low, double value, double high, String what) {
        assertTrue(low <= value && value <= high,
                () -> String.format(Locale.ROOT, "%s: %.3f is not between %.3f and %.3f", what, value, low, high));
    }

    /** Bands by class, subcompact to utility: common practice, no source. */
    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource({
        "engine-power, HORSEPOWER, 18-26 20-35 28-45 38-60 45-80",
        "pto-power, HORSEPOWER, 13-21 16-29 22-38 30-51 36-70",
        "tractor-mass, POUND, 1200-1900 1800-2900 2600-3900 3400-5500 4500-8000",
        "wheelbase, INCH, 52-60 58-68 64-75 70-82 78-92",
        "length, INCH, 90-112 105-125 115-138 126-150 135-170",
        "tire-width, INCH, 42-52 48-62 55-70 62-78 66-86",
        "height, INCH, 78-90 86-98 88-98 94-103 96-112",
        "loader-mass, POUND, 280-550 450-800 650-1150 900-1500 1200-2000",
        "loader-lift-pins, POUND, 600-1150 900-1900 1600-3000 2300-4000 3000-5500",
        "loader-height, INCH, 65-76 84-100 95-112 105-122 115-145",
        "hitch-lift, POUND, 450-900 900-1800 1500-2600 1900-3500 2400-5500",
        "hydraulic-flow, US_GALLON_PER_MINUTE, 3-6 4-8 6-10 8-13 10-20",
        "hydraulic-pressure, POUND_FORCE_PER_SQUARE_INCH, 1700-2400 1900-2600 2100-2800 2300-2900 2300-3000"
    })
    void figuresLieInTheBandUsualForTheClass(String figureId, UnitOfMeasure unit, String bands) {
        Figure figure = Arrays.stream(Figure.values())
                .filter(each -> each.id().equals(figureId))
                .findFirst()
                .orElseThrow();
        String[] byClass = bands.split(" ", -1);
        List<MachineClass> classes = List.of(MachineClass.values());
        for (int i = 0; i < classes.size(); i++) {
            String[] band = byClass[i].split("-", -1);
            for (Model model : of(classes.get(i))) {
                assertBetween(unit.toSi(Double.parseDouble(band[0])), si(model, figure),
                        unit.toSi(Double.parseDouble(band[1])), model.id() + " " + figureId);
            }
        }
    }

    @Test
    void axlesCarryTheTractorAndTheRearOneCarriesMore() {
        for (Model model : models) {
            double front = si(model, Figure.FRONT_AXLE_MASS);
            double whole = si(model, Figure.TRACTOR_MASS);
            assertEquals(whole, front + si(model, Figure.REAR_AXLE_MASS), 0.005 * whole, model.id() + " axles");
            // With the loader off; common practice, no source.
            assertBetween(0.33, front / whole, 0.47, model.id() + " share of the front axle");
        }
    }

    /**
     * The farther out the load, the less is lifted. The loss from the pins to 500 mm ahead, and from the link ends to
     * 24 in behind, is some 20 to 35 %: common practice, no source.
     */
    @Test
    void liftFallsWithDistance() {
        for (Model model : models) {
            assertBetween(0.65, si(model, Figure.LOADER_LIFT) / si(model, Figure.LOADER_LIFT_PINS), 0.82,
                    model.id() + " loader");
            assertBetween(0.65, si(model, Figure.HITCH_LIFT) / si(model, Figure.HITCH_LIFT_ENDS), 0.82,
                    model.id() + " hitch");
        }
    }

    /** What drive and pumps take of the engine's power, hydrostatic most: common practice, no source. */
    @Test
    void theShaftGivesLessThanTheEngine() {
        for (Model model : models) {
            assertBetween(0.74, si(model, Figure.PTO_POWER) / si(model, Figure.ENGINE_POWER), 0.92,
                    model.id() + " power at the shaft");
        }
    }

    /** Ratios of a loader, its lift and the tractor's size: common practice, no source. */
    @Test
    void proportionsAreThoseOfTractors() {
        for (Model model : models) {
            assertBetween(0.4, si(model, Figure.LOADER_LIFT_PINS) / si(model, Figure.TRACTOR_MASS), 0.85,
                    model.id() + " lift to its own mass");
            assertBetween(0.2, si(model, Figure.LOADER_MASS) / si(model, Figure.TRACTOR_MASS), 0.33,
                    model.id() + " loader to tractor");
            assertBetween(1.65, si(model, Figure.LENGTH) / si(model, Figure.WHEELBASE), 1.95, model.id() + " length");
            assertTrue(si(model, Figure.HEIGHT_FOLDED) <= si(model, Figure.HEIGHT), model.id() + " folded");
        }
    }

    @Test
    void aLargerClassHasMoreOfEverything() {
        List<String> wrong = new ArrayList<>();
        for (Figure figure : List.of(Figure.ENGINE_POWER, Figure.PTO_POWER, Figure.TRACTOR_MASS, Figure.WHEELBASE,
                Figure.LOADER_LIFT, Figure.LOADER_HEIGHT, Figure.HITCH_LIFT, Figure.HYDRAULIC_FLOW)) {
            double before = 0;
            for (MachineClass machineClass : MachineClass.values()) {
                double mean = of(machineClass).stream().mapToDouble(model -> si(model, figure)).average().orElse(0);
                if (mean <= before) {
                    wrong.add(machineClass.id() + " " + figure.id());
                }
                before = mean;
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** A fifth of the bare tractor stays on the front axle, whatever the hitch lifts: implement makers' manuals. */
    @Test
    void everyToolThatTheHitchLiftsAsksForWeightOnTheSteeringAxle() {
        var hitchLift = CapabilityId.of(Figure.HITCH_LIFT);
        for (Item item : items) {
            boolean lifted = item instanceof Attachment tool
                    && tool.state().value().equals("rear-tool-on")
                    && tool.needs().stream().anyMatch(need -> need.of().equals(hitchLift));
            boolean asks = item.needs().stream()
                    .anyMatch(need -> need.threshold() instanceof Threshold.SteeringWeight);
            assertEquals(lifted, asks, item.id().value());
        }
    }
}
