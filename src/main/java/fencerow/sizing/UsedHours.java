package fencerow.sizing;

import fencerow.terms.Spread;
import fencerow.terms.Time;

/**
 * Hours on the meter against age, and the next service.
 *
 * <p>Formula: hours over years; the next service falls due its interval after the last one.
 *
 * <p>Source: {@link Source#TRADE_PRACTICE}: homes put 50 to 150 hours a year on a tractor, small businesses 200 to 400.
 * Valid from half a year up; meters get changed and older ones count engine turns, so look at pedals, seat, pins and
 * tires too. Caution: {@link Caution#NOT_AN_APPROVAL}.
 */
public final class UsedHours {
    /** Meter reading, up to 20,000 h. */
    public static final Bounds<Time> METER = new Bounds<>("meter", Time.ofHours(0), Time.ofHours(20_000));
    /** Age, half a year to 80 years. */
    public static final Bounds<Time> AGE = new Bounds<>("age", Time.ofYears(0.5), Time.ofYears(80));
    /** Hours between services, 10 to 3,000. */
    public static final Bounds<Time> INTERVAL = new Bounds<>("interval", Time.ofHours(10), Time.ofHours(3000));
    /** Usual at a home. */
    public static final Spread<Time> HOME = Spread.of(Time.ofHours(50), Time.ofHours(150));
    /** Usual in a small business. */
    public static final Spread<Time> BUSINESS = Spread.of(Time.ofHours(200), Time.ofHours(400));

    private UsedHours() {}

    /** Hours in a year on average; within {@link #METER} and {@link #AGE}. */
    public static Time perYear(Time meter, Time age) {
        AGE.check(age);
        return new Time(METER.check(meter) / age.toYears());
    }

    /**
     * Hours until the next service; zero or less means overdue.
     *
     * @param meter    reading now
     * @param last     reading at the last service, not above {@code meter}
     * @param interval between services, within {@link #INTERVAL}
     */
    public static Time untilService(Time meter, Time last, Time interval) {
        double done = new Bounds<>("last-service", new Time(0), meter).check(last);
        return new Time(done + INTERVAL.check(interval) - METER.check(meter));
    }
}
