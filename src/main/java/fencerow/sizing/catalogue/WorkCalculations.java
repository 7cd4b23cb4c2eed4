package fencerow.sizing.catalogue;

import fencerow.sizing.Bounds;
import fencerow.sizing.Caution;
import fencerow.sizing.FieldCapacity;
import fencerow.sizing.FieldMachine;
import fencerow.sizing.Source;
import fencerow.terms.Area;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Spread;
import fencerow.terms.Time;
import java.util.List;

/** How long mowing, tilling and brush-cutting take, and how wide a tool must be. */
final class WorkCalculations {
    private static final Choice<FieldMachine> MACHINE =
            Choice.of("machine", FieldMachine.class, FieldMachine::id, FieldMachine.LAWN_MOWER);
    private static final Measured<Area> AREA = Measured.of(FieldCapacity.AREA, Area::of, Area.ofAcres(0.5))
            .preset(Area.ofAcres(3))
            .usual(Area.ofAcres(0.25), Area.ofAcres(200));
    private static final Measured<Length> WIDTH = Measured.of(FieldCapacity.WIDTH, Length::of, Length.ofInches(6))
            .preset(Length.ofInches(60))
            .usual(Length.ofFeet(2), Length.ofFeet(15));
    /** Left out, the machine's usual speeds are taken. */
    private static final Measured<Speed> SPEED = Measured.of(FieldCapacity.SPEED, Speed::of, Speed.ofMph(0.5))
            .usual(Speed.ofMph(1), Speed.ofMph(8));
    /** Left out, the machine's usual efficiencies are taken. */
    private static final Measured<Ratio> EFFICIENCY =
            Measured.of(FieldCapacity.EFFICIENCY, Ratio::of, Ratio.ofPercent(5))
                    .usual(Ratio.ofPercent(50), Ratio.ofPercent(90));
    private static final Measured<Time> TIME = Measured.of(FieldCapacity.TIME, Time::of, Time.ofHours(0.5))
            .preset(Time.ofHours(2))
            .usual(Time.ofMinutes(15), Time.ofHours(40));

    private static final Measured<Length> PACED = Measured.of(
                    new Bounds<>("paced-distance", Length.ofFeet(10), Length.ofFeet(1000)),
                    Length::of,
                    Length.ofFeet(1))
            .preset(Length.ofFeet(88));
    private static final Measured<Time> STOPPED = Measured.of(
                    new Bounds<>("stopped-time", Time.ofSeconds(1), Time.ofMinutes(10)), Time::of, Time.ofSeconds(1))
            .preset(Time.ofSeconds(12))
            .usual(Time.ofSeconds(5), Time.ofMinutes(2));

    private static final Output PACE = new Output("speed", Dimension.SPEED);
    private static final Output RATE = new Output("rate", Dimension.WORK_RATE);
    private static final Output HOURS = new Output("time", Dimension.TIME);
    private static final Output NEEDED = new Output("width-needed", Dimension.LENGTH);

    private WorkCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("work-time")
                        .asks(MACHINE, AREA, WIDTH, SPEED, EFFICIENCY)
                        .gives(RATE, HOURS)
                        .by(WorkCalculations::workTime),
                named("width-to-finish")
                        .asks(MACHINE, AREA, TIME, SPEED, EFFICIENCY)
                        .gives(NEEDED)
                        .by(WorkCalculations::widthToFinish),
                named("paced-speed")
                        .asks(PACED, STOPPED)
                        .gives(PACE)
                        .by((in, out) -> out.put(PACE, FieldCapacity.timed(in.get(PACED), in.get(STOPPED)))));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.WORK)
                .from(Source.FIELD_CAPACITY_BULLETIN)
                .beware(Caution.SPEED_ON_ROUGH_GROUND, Caution.THROWN_OBJECTS, Caution.ROPS_AND_BELT);
    }

    private static void workTime(Point in, Outcome out) {
        Spread<Speed> speed = speed(in, out);
        Spread<Ratio> efficiency = efficiency(in, out);
        Length width = in.get(WIDTH);
        Area area = in.get(AREA);
        out.put(RATE, Spread.of(
                FieldCapacity.rate(width, speed.low(), efficiency.low()),
                FieldCapacity.rate(width, speed.high(), efficiency.high())));
        out.put(HOURS, Spread.of(
                FieldCapacity.time(area, width, speed.high(), efficiency.high()),
                FieldCapacity.time(area, width, speed.low(), efficiency.low())));
    }

    private static void widthToFinish(Point in, Outcome out) {
        Spread<Speed> speed = speed(in, out);
        Spread<Ratio> efficiency = efficiency(in, out);
        Area area = in.get(AREA);
        Time time = in.get(TIME);
        out.put(NEEDED, Spread.of(
                FieldCapacity.widthToFinish(area, time, speed.high(), efficiency.high()),
                FieldCapacity.widthToFinish(area, time, speed.low(), efficiency.low())));
    }

    private static Spread<Speed> speed(Point in, Outcome out) {
        FieldMachine machine = in.get(MACHINE);
        Spread<Speed> speed = in.find(SPEED).map(Spread::exactly).orElse(machine.speed());
        out.used(SPEED, speed).source(machine.source());
        return speed;
    }

    private static Spread<Ratio> efficiency(Point in, Outcome out) {
        Spread<Ratio> efficiency =
                in.find(EFFICIENCY).map(Spread::exactly).orElse(in.get(MACHINE).efficiency());
        out.used(EFFICIENCY, efficiency);
        return efficiency;
    }
}
