package fencerow.sizing;

import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;
import fencerow.terms.Time;

/**
 * What is left of a tractor's value, as a share of the <em>current list price of an equivalent new one</em>, not of
 * the price paid.
 *
 * <p>Formula: {@code RV = (C1 - C2 n^0.5 - C3 h^0.5)^2} with age n in years and h hours a year; the older form is
 * {@code 0.68 x 0.92^n}.
 *
 * <p>Source: {@link Source#MACHINERY_MANAGEMENT_DATA}, from memory; the rows above 80 hp agree with worked examples in
 * print. Valid for farm tractors at auction, ages to 30 years and 2,000 h a year: compacts stray, so both forms are
 * given. Caution: {@link Caution#ESTIMATE_NOT_APPRAISAL}.
 */
public enum RemainingValue {
    /** Below 60 kW (80 hp). */
    UNDER_80_HP("under-80-hp", 0.9809, 0.0934, 0.0058),
    /** 60 to 112 kW (80 to 150 hp). */
    FROM_80_TO_150_HP("80-to-150-hp", 0.9421, 0.0999, 0.0008),
    /** Above 112 kW (150 hp). */
    OVER_150_HP("over-150-hp", 0.9756, 0.1187, 0.0019);

    /** Age, new to 30 years. */
    public static final Bounds<Time> AGE = new Bounds<>("age", Time.ofYears(0), Time.ofYears(30));
    /** Use in a year, 0 to 2,000 h. */
    public static final Bounds<Time> HOURS_A_YEAR =
            new Bounds<>("hours-a-year", Time.ofHours(0), Time.ofHours(2000));

    private static final double OLDER_FIRST = 0.68;
    private static final double OLDER_YEARLY = 0.92;

    private final String id;
    private final double c1;
    private final double c2;
    private final double c3;

    RemainingValue(String id, double c1, double c2, double c3) {
        this.id = id;
        this.c1 = c1;
        this.c2 = c2;
        this.c3 = c3;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** The row for an engine power. */
    public static RemainingValue forPower(Power engine) {
        double horsepower = engine.toHorsepower();
        if (horsepower < 80) {
            return UNDER_80_HP;
        }
        return horsepower <= 150 ? FROM_80_TO_150_HP : OVER_150_HP;
    }

    /** Share left by the newer equation; within {@link #AGE} and {@link #HOURS_A_YEAR}. */
    public Ratio share(Time age, Time hoursAYear) {
        AGE.check(age);
        HOURS_A_YEAR.check(hoursAYear);
        double root = c1 - c2 * Math.sqrt(age.toYears()) - c3 * Math.sqrt(hoursAYear.toHours());
        return new Ratio(Math.max(0, root) * Math.max(0, root));
    }

    /** Share left by the older form, which knows no hours; within {@link #AGE}. */
    public static Ratio olderShare(Time age) {
        AGE.check(age);
        return new Ratio(OLDER_FIRST * Math.pow(OLDER_YEARLY, age.toYears()));
    }

    /** Both forms as a range. */
    public Spread<Ratio> spread(Time age, Time hoursAYear) {
        Ratio newer = share(age, hoursAYear);
        Ratio older = olderShare(age);
        return newer.si() < older.si() ? Spread.of(newer, older) : Spread.of(older, newer);
    }
}
