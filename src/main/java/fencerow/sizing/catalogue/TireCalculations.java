package fencerow.sizing.catalogue;

import fencerow.sizing.Bounds;
import fencerow.sizing.Caution;
import fencerow.sizing.Fluid;
import fencerow.sizing.Limit;
import fencerow.sizing.Source;
import fencerow.sizing.TireFluid;
import fencerow.sizing.TireSize;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Spread;
import fencerow.terms.Temperature;
import fencerow.terms.Volume;
import java.util.List;

/** Liquid in tires. */
final class TireCalculations {
    private static final Choice<TireSize> SIZE =
            Choice.of("tire", TireSize.all(), TireSize::label, TireSize.find("12.4-24").orElseThrow());
    private static final Choice<Fluid> FLUID = Choice.of("fluid", Fluid.class, Fluid::id, Fluid.BEET_JUICE);
    private static final Measured<Amount> TIRES = Measured.count("tires", 1, TireFluid.MOST_TIRES, 2);
    private static final Measured<Temperature> WINTER_LOW = Measured.of(
                    new Bounds<>("winter-low", Temperature.ofFahrenheit(-80), Temperature.ofFahrenheit(80)),
                    Temperature::of,
                    Temperature.ofFahrenheit(5))
            .preset(Temperature.ofFahrenheit(0))
            .usual(Temperature.ofFahrenheit(-50), Temperature.ofFahrenheit(50));
    private static final Measured<Amount> PRICE = Measured.money("price-of-gallon", 0, 50, 0.5);
    private static final Measured<Length> OVERALL =
            Measured.of(TireFluid.OVERALL_DIAMETER, Length::of, Length.ofInches(1)).preset(Length.ofInches(41));
    private static final Measured<Length> RIM = Measured.of(
                    new Bounds<>("rim-diameter", Length.ofInches(6), Length.ofInches(60)),
                    Length::of,
                    Length.ofInches(1))
            .preset(Length.ofInches(20));
    private static final Measured<Length> SECTION =
            Measured.of(TireFluid.SECTION, Length::of, Length.ofInches(0.5)).preset(Length.ofInches(14));

    private static final Output FILL = new Output("fill", Dimension.VOLUME);
    private static final Output MASS = new Output("mass", Dimension.MASS);
    private static final Output COST = new Output("cost", Dimension.MONEY);
    private static final Output SLUSH = new Output("slush-point", Dimension.TEMPERATURE);
    private static final Output SOLID = new Output("solid-point", Dimension.TEMPERATURE);

    private TireCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("tire-fluid")
                        .asks(SIZE, FLUID, TIRES, WINTER_LOW, PRICE)
                        .gives(FILL, MASS, SLUSH, SOLID, COST)
                        .by(TireCalculations::fluid),
                named("tire-volume")
                        .asks(OVERALL, RIM, SECTION)
                        .gives(FILL)
                        .from(Source.TIRE_GEOMETRY)
                        .by(TireCalculations::volume));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.TIRES)
                .beware(Caution.FLUID_FILL_LIMIT, Caution.FLUID_UNDER_PRESSURE, Caution.FLUID_ROAD_SPEED)
                .beware(Caution.AXLE_AND_TIRE_RATINGS, Caution.SLOPES);
    }

    private static void fluid(Point in, Outcome out) {
        TireSize size = in.get(SIZE);
        Fluid fluid = in.get(FLUID);
        int tires = in.count(TIRES);
        Spread<Volume> each = size.fillRange();
        Spread<Volume> fill = Spread.of(new Volume(each.low().si() * tires), new Volume(each.high().si() * tires));
        double density = fluid.density().si();
        out.put(FILL, fill);
        out.put(MASS, Spread.of(new Mass(fill.low().si() * density), new Mass(fill.high().si() * density)));
        out.put(SLUSH, fluid.slushPoint()).put(SOLID, fluid.solidPoint());
        in.find(PRICE).ifPresent(price -> out.put(COST, Spread.of(
                Measured.dollars(price.si() * fill.low().toUsGallons()),
                Measured.dollars(price.si() * fill.high().toUsGallons()))));
        out.limit(Limit.FILL_LIMIT).source(size.source()).source(fluid.source());
        out.warnIf(size.estimated(), Warning.Kind.ESTIMATED_VOLUME, SIZE.id());
        out.warnIf(!fluid.staysLiquidAt(in.get(WINTER_LOW)), Warning.Kind.FREEZES, FLUID.id());
        if (fluid.isCorrosive()) {
            out.caution(Caution.FLUID_CORROSION);
        }
        if (fluid.isPoisonous()) {
            out.caution(Caution.FLUID_POISON);
        }
    }

    private static void volume(Point in, Outcome out) {
        double estimate = TireFluid.estimate(in.get(OVERALL), in.get(RIM), in.get(SECTION)).si();
        out.put(FILL, Spread.of(new Volume(0.85 * estimate), new Volume(1.15 * estimate)));
        out.warn(Warning.Kind.ESTIMATED_VOLUME, FILL.id()).limit(Limit.FILL_LIMIT);
    }
}
