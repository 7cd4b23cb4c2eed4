package fencerow.sizing.catalogue;

import fencerow.sizing.Bounds;
import fencerow.sizing.Caution;
import fencerow.sizing.Circuits;
import fencerow.sizing.Coupler;
import fencerow.sizing.Cylinder;
import fencerow.sizing.HydraulicPower;
import fencerow.sizing.HydraulicTool;
import fencerow.sizing.Limit;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Dimension;
import fencerow.terms.Flow;
import fencerow.terms.Length;
import fencerow.terms.Pressure;
import fencerow.terms.Ratio;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Oil: power, cylinders, circuits and couplers. */
final class HydraulicCalculations {
    private static final Measured<Pressure> PRESSURE = Measured.of(
                    Cylinder.PRESSURE, Pressure::of, Pressure.ofPsi(100))
            .preset(Pressure.ofPsi(2500))
            .usual(Pressure.ofPsi(1500), Pressure.ofPsi(3500));
    private static final Measured<Flow> FLOW = Measured.of(Cylinder.FLOW, Flow::of, Flow.ofGpm(0.5))
            .preset(Flow.ofGpm(6))
            .usual(Flow.ofGpm(3), Flow.ofGpm(20));
    private static final Measured<Ratio> EFFICIENCY =
            Measured.of(HydraulicPower.EFFICIENCY, Ratio::of, Ratio.ofPercent(5)).preset(Ratio.ofPercent(85));
    private static final Measured<Length> BORE =
            Measured.of(Cylinder.BORE, Length::of, Length.ofInches(0.5)).preset(Length.ofInches(4));
    private static final Measured<Length> ROD = Measured.of(
                    new Bounds<>("rod", new Length(0), Length.ofInches(11)), Length::of, Length.ofInches(0.25))
            .preset(Length.ofInches(2));
    private static final Measured<Length> STROKE =
            Measured.of(Cylinder.STROKE, Length::of, Length.ofInches(1)).preset(Length.ofInches(24));
    private static final Choice<Boolean> AT_ONCE = Choice.yesNo("at-once", false);
    private static final List<Choice<Optional<HydraulicTool>>> TOOLS =
            List.of(tool("first-tool"), tool("second-tool"), tool("third-tool"), tool("fourth-tool"));
    private static final Choice<Coupler> TRACTOR_COUPLER =
            Choice.of("tractor-coupler", Coupler.class, Coupler::id, Coupler.ISO_5675);
    private static final Choice<Coupler> TOOL_COUPLER =
            Choice.of("tool-coupler", Coupler.class, Coupler::id, Coupler.ISO_16028);

    private static final Output POWER = new Output("power", Dimension.POWER);
    private static final Output TO_DRIVE = new Output("power-to-drive", Dimension.POWER);
    private static final Output PUSH = new Output("push", Dimension.FORCE);
    private static final Output PULL = new Output("pull", Dimension.FORCE);
    private static final Output OUT_SPEED = new Output("out-speed", Dimension.SPEED);
    private static final Output OUT_TIME = new Output("out-time", Dimension.TIME);
    private static final Output CYCLE = new Output("cycle-time", Dimension.TIME);
    private static final Output FRONT = new Output("front-circuits", Dimension.COUNT);
    private static final Output REAR = new Output("rear-circuits", Dimension.COUNT);
    private static final Output SLOWEST_FLOW = new Output("flow-needed", Dimension.FLOW);

    private HydraulicCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("hydraulic-power")
                        .asks(PRESSURE, FLOW, EFFICIENCY)
                        .gives(POWER, TO_DRIVE)
                        .from(Source.CYLINDER_FORMULAS, Source.FLUID_POWER_GUIDE)
                        .by(HydraulicCalculations::power),
                named("log-splitter")
                        .asks(BORE, ROD, STROKE, PRESSURE, FLOW)
                        .gives(PUSH, PULL, OUT_SPEED, OUT_TIME, CYCLE)
                        .from(Source.CYLINDER_FORMULAS)
                        .by(HydraulicCalculations::splitter),
                named("circuits")
                        .asks(TOOLS.toArray(Parameter[]::new))
                        .asks(AT_ONCE, FLOW)
                        .gives(FRONT, REAR, SLOWEST_FLOW)
                        .from(Source.TRADE_PRACTICE)
                        .by(HydraulicCalculations::circuits),
                named("couplers")
                        .asks(TRACTOR_COUPLER, TOOL_COUPLER)
                        .from(Source.COUPLER_STANDARDS)
                        .by((in, out) -> out.find("couplers",
                                in.get(TRACTOR_COUPLER).fits(in.get(TOOL_COUPLER)) ? "fit" : "do-not-fit")));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.HYDRAULICS).beware(Caution.OIL_INJECTION, Caution.RELIEVE_PRESSURE);
    }

    private static Choice<Optional<HydraulicTool>> tool(String id) {
        Map<String, Optional<HydraulicTool>> options = new LinkedHashMap<>();
        options.put("none", Optional.empty());
        Arrays.stream(HydraulicTool.values()).forEach(tool -> options.put(tool.id(), Optional.of(tool)));
        return new Choice<>(id, options, "none");
    }

    private static void power(Point in, Outcome out) {
        out.put(POWER, HydraulicPower.of(in.get(PRESSURE), in.get(FLOW)));
        out.put(TO_DRIVE, HydraulicPower.toDrive(in.get(PRESSURE), in.get(FLOW), in.get(EFFICIENCY)));
    }

    private static void splitter(Point in, Outcome out) {
        Cylinder cylinder = new Cylinder(in.get(BORE), in.get(ROD), in.get(STROKE));
        Flow flow = in.get(FLOW);
        out.put(PUSH, cylinder.push(in.get(PRESSURE))).put(PULL, cylinder.pull(in.get(PRESSURE)));
        out.put(OUT_SPEED, cylinder.outSpeed(flow)).put(OUT_TIME, cylinder.outTime(flow));
        out.put(CYCLE, cylinder.cycleTime(flow)).limit(Limit.AVAILABLE_PRESSURE).limit(Limit.AVAILABLE_FLOW);
        boolean slow = flow.si() < HydraulicTool.LOG_SPLITTER.flow().low().si();
        out.warnIf(slow, Warning.Kind.SLOW, FLOW.id());
    }

    private static void circuits(Point in, Outcome out) {
        List<HydraulicTool> tools = TOOLS.stream().map(in::get).flatMap(Optional::stream).toList();
        boolean atOnce = in.get(AT_ONCE);
        Circuits circuits = atOnce ? Circuits.atOnce(tools) : Circuits.oneAtATime(tools);
        out.count(FRONT, circuits.front()).count(REAR, circuits.rear());
        out.limit(atOnce ? Limit.CIRCUITS_AT_ONCE : Limit.LARGEST_TOOL);
        circuits.needs().forEach(need -> out.find("needs", need.id()));
        Stream<Flow> slowest = tools.stream().map(tool -> tool.flow().low());
        double needed = slowest.mapToDouble(Flow::si).max().orElse(0);
        out.put(SLOWEST_FLOW, new Flow(needed));
        out.warnIf(in.get(FLOW).si() < needed, Warning.Kind.SLOW, FLOW.id());
    }
}
