package fencerow.sizing.catalogue;

import fencerow.sizing.BatteryState;
import fencerow.sizing.Bounds;
import fencerow.sizing.Caution;
import fencerow.sizing.CylinderDrift;
import fencerow.sizing.Limit;
import fencerow.sizing.NoiseExposure;
import fencerow.sizing.Source;
import fencerow.sizing.TireTread;
import fencerow.sizing.UsedHours;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Ratio;
import fencerow.terms.Time;
import java.util.List;
import java.util.function.Function;

/** Arithmetic beside a used tractor. */
final class UsedCalculations {
    private static final Measured<Time> METER = Measured.of(UsedHours.METER, Time::of, Time.ofHours(50))
            .preset(Time.ofHours(800))
            .usual(Time.ofHours(0), Time.ofHours(6000));
    private static final Measured<Time> AGE = Measured.of(UsedHours.AGE, Time::of, Time.ofYears(1))
            .preset(Time.ofYears(8))
            .usual(Time.ofYears(0.5), Time.ofYears(40));
    private static final Measured<Time> LAST = METER.as("last-service").preset(Time.ofHours(650));
    private static final Measured<Time> INTERVAL =
            Measured.of(UsedHours.INTERVAL, Time::of, Time.ofHours(50)).preset(Time.ofHours(200));
    private static final Measured<Amount> MILLIVOLTS = Measured.count("millivolts", 5000, 20_000, 14_000);
    private static final Choice<CylinderDrift> MACHINE =
            Choice.of("machine", CylinderDrift.class, CylinderDrift::id, CylinderDrift.COMPACT_LOADER_LARGE);
    private static final Measured<Length> SUNK = Measured.of(
                    new Bounds<>("sunk", new Length(0), Length.ofInches(40)),
                    Length::of,
                    Length.ofMillimeters(5))
            .preset(Length.ofMillimeters(10));
    private static final Measured<Time> WAITED = Measured.of(
                    new Bounds<>("waited", Time.ofMinutes(1), Time.ofMinutes(60)), Time::of, Time.ofMinutes(1))
            .preset(Time.ofMinutes(5));
    private static final Choice<TireTread> TREAD = Choice.of("tread", TireTread.class, TireTread::id, TireTread.R4);
    private static final Measured<Length> DEPTH = Measured.of(
                    new Bounds<>("tread-depth", new Length(0), Length.ofInches(4)),
                    Length::of,
                    Length.ofMillimeters(1))
            .preset(Length.ofInches(0.6));
    private static final Measured<Amount> LEVEL = Measured.of(
                    new Bounds<>("decibels", Amount.count(80), Amount.count(130)),
                    Function.<Amount>identity(),
                    Amount.count(1))
            .preset(Amount.count(92));

    private static final Output PER_YEAR = new Output("hours-a-year", Dimension.TIME);
    private static final Output UNTIL = new Output("until-service", Dimension.TIME);
    private static final Output ALLOWED = new Output("allowed", Dimension.LENGTH);
    private static final Output OF_ALLOWED = new Output("share-of-allowed", Dimension.RATIO);
    private static final Output NEW_DEPTH = new Output("depth-when-new", Dimension.LENGTH);
    private static final Output LEFT = new Output("tread-left", Dimension.RATIO);
    private static final Output LEGAL = new Output("legal-time", Dimension.TIME);
    private static final Output ADVISED = new Output("advised-time", Dimension.TIME);

    private UsedCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("hours-a-year").asks(METER, AGE).gives(PER_YEAR).from(Source.TRADE_PRACTICE)
                        .by(UsedCalculations::perYear),
                named("service-due").asks(METER, LAST, INTERVAL).gives(UNTIL).from(Source.TRADE_PRACTICE)
                        .by(UsedCalculations::serviceDue),
                named("charging").asks(MILLIVOLTS).from(Source.CHARGING_CHECKS).by(UsedCalculations::charging),
                named("loader-drift").asks(MACHINE, SUNK, WAITED).gives(ALLOWED, OF_ALLOWED)
                        .from(Source.SERVICE_MANUAL_DRIFT)
                        .beware(Caution.DRIFT_TEST, Caution.NOBODY_UNDER_LOAD)
                        .by(UsedCalculations::drift),
                named("tread").asks(TREAD, DEPTH).gives(NEW_DEPTH, LEFT).from(Source.TREAD_GUIDES)
                        .by(UsedCalculations::tread),
                named("noise").asks(LEVEL).gives(LEGAL, ADVISED).from(Source.HEARING_LIMITS).beware(Caution.HEARING)
                        .by(UsedCalculations::noise));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.USED).beware(Caution.NOT_AN_APPROVAL);
    }

    private static void perYear(Point in, Outcome out) {
        Time perYear = UsedHours.perYear(in.get(METER), in.get(AGE));
        out.put(PER_YEAR, perYear);
        String use = "between";
        if (UsedHours.HOME.contains(perYear)) {
            use = "home";
        } else if (UsedHours.BUSINESS.contains(perYear)) {
            use = "business";
        } else if (perYear.si() < UsedHours.HOME.low().si()) {
            use = "below-home";
        } else if (perYear.si() > UsedHours.BUSINESS.high().si()) {
            use = "above-business";
        }
        out.find("use", use);
    }

    private static void serviceDue(Point in, Outcome out) {
        Time until = UsedHours.untilService(in.get(METER), in.get(LAST), in.get(INTERVAL));
        out.put(UNTIL, until).limit(Limit.SERVICE_HOURS);
        out.warnIf(until.si() <= 0, Warning.Kind.OVERDUE, UNTIL.id());
    }

    private static void charging(Point in, Outcome out) {
        BatteryState state = BatteryState.running(in.get(MILLIVOLTS).si() / 1000);
        out.find("charging", state.id());
        out.warnIf(state != BatteryState.GOOD, Warning.Kind.OUT_OF_ORDER, MILLIVOLTS.id());
    }

    private static void drift(Point in, Outcome out) {
        Length allowed = in.get(MACHINE).limitIn(in.get(WAITED));
        out.put(ALLOWED, allowed);
        out.put(OF_ALLOWED, new Ratio(in.get(SUNK).si() / allowed.si()));
        out.warnIf(in.get(SUNK).si() > allowed.si(), Warning.Kind.OUT_OF_ORDER, SUNK.id());
    }

    private static void tread(Point in, Outcome out) {
        Length whenNew = in.get(TREAD).newDepth();
        out.put(NEW_DEPTH, whenNew).put(LEFT, new Ratio(in.get(DEPTH).si() / whenNew.si()));
        out.warnIf(in.get(DEPTH).si() > whenNew.si(), Warning.Kind.UNUSUAL_INPUT, DEPTH.id());
    }

    private static void noise(Point in, Outcome out) {
        out.put(LEGAL, NoiseExposure.OSHA.allowed(in.get(LEVEL).si()));
        out.put(ADVISED, NoiseExposure.NIOSH.allowed(in.get(LEVEL).si()));
    }
}
