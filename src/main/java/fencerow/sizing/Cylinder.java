package fencerow.sizing;

import fencerow.terms.Area;
import fencerow.terms.Flow;
import fencerow.terms.Force;
import fencerow.terms.Length;
import fencerow.terms.Pressure;
import fencerow.terms.Speed;
import fencerow.terms.Time;
import fencerow.terms.Volume;

/**
 * A double-acting hydraulic cylinder: force, speed and time.
 *
 * <p>Formula: area {@code pi / 4 D^2} pushing, {@code pi / 4 (D^2 - d^2)} pulling, with bore D and rod d; force is
 * pressure times area, speed is flow over area. In the trade's units {@code in/s = 231 gpm / (60 in2)}.
 *
 * <p>Source: {@link Source#CYLINDER_FORMULAS}. Valid without losses: real ones are slower and some per cent weaker.
 * Caution: {@link Caution#OIL_INJECTION}, {@link Caution#RELIEVE_PRESSURE}.
 *
 * @param bore   inside diameter
 * @param rod    rod diameter, below the bore
 * @param stroke travel
 */
public record Cylinder(Length bore, Length rod, Length stroke) {
    /** Bore, half an inch to 12 in. */
    public static final Bounds<Length> BORE = new Bounds<>("bore", Length.ofInches(0.5), Length.ofInches(12));
    /** Stroke, 1 in to 10 ft. */
    public static final Bounds<Length> STROKE = new Bounds<>("stroke", Length.ofInches(1), Length.ofFeet(10));
    /** Working pressure, up to 6,000 psi. */
    public static final Bounds<Pressure> PRESSURE =
            new Bounds<>("pressure", Pressure.ofPsi(50), Pressure.ofPsi(6000));
    /** Flow, up to 60 gpm. */
    public static final Bounds<Flow> FLOW = new Bounds<>("flow", Flow.ofGpm(0.1), Flow.ofGpm(60));

    /** @throws OutOfRangeException outside {@link #BORE} or {@link #STROKE}, or if the rod is not below the bore */
    public Cylinder {
        BORE.check(bore);
        STROKE.check(stroke);
        new Bounds<>("rod", new Length(0), new Length(0.95 * bore.si())).check(rod);
    }

    /** Area that pushes. */
    public Area pushArea() {
        return new Area(Math.PI / 4 * bore.si() * bore.si());
    }

    /** Area that pulls: the rod's taken off. */
    public Area pullArea() {
        return new Area(Math.PI / 4 * (bore.si() * bore.si() - rod.si() * rod.si()));
    }

    /** Push at a pressure within {@link #PRESSURE}. */
    public Force push(Pressure pressure) {
        return new Force(PRESSURE.check(pressure) * pushArea().si());
    }

    /** Pull at a pressure within {@link #PRESSURE}. */
    public Force pull(Pressure pressure) {
        return new Force(PRESSURE.check(pressure) * pullArea().si());
    }

    /** Pressure for a push. */
    public Pressure pressureFor(Force push) {
        return new Pressure(push.si() / pushArea().si());
    }

    /** Oil that fills it, pushing. */
    public Volume pushVolume() {
        return new Volume(pushArea().si() * stroke.si());
    }

    /** Speed going out, flow within {@link #FLOW}. */
    public Speed outSpeed(Flow flow) {
        return new Speed(FLOW.check(flow) / pushArea().si());
    }

    /** Time going out, flow within {@link #FLOW}. */
    public Time outTime(Flow flow) {
        return new Time(stroke.si() / outSpeed(flow).si());
    }

    /** Time coming back, flow within {@link #FLOW}. */
    public Time backTime(Flow flow) {
        return new Time(stroke.si() * pullArea().si() / FLOW.check(flow));
    }

    /** Time of a whole cycle, such as one split of a log splitter; flow within {@link #FLOW}. */
    public Time cycleTime(Flow flow) {
        return new Time(outTime(flow).si() + backTime(flow).si());
    }
}
