package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;

/**
 * Power at the PTO and at the drawbar from what is published.
 *
 * <p>Formula: PTO is about 0.86 of engine power, drawbar on concrete about 0.86 of PTO power; by transmission see
 * {@link Transmission}. An engine without a turbocharger loses about 3 % for 1,000 ft of altitude.
 *
 * <p>Source: {@link Source#POWER_RATINGS_TEXTBOOK}; bands {@link Source#TRADE_PRACTICE}; altitude from memory. Valid
 * from 5 to 300 hp. A published PTO power always goes first. Caution: {@link Caution#PTO_GUARDS}.
 */
public final class PtoPower {
    /** Engine, PTO or drawbar power, 5 to 300 hp. */
    public static final Bounds<Power> POWER =
            new Bounds<>("power", Power.ofHorsepower(5), Power.ofHorsepower(300));
    /** Altitude, sea level to 14,000 ft. */
    public static final Bounds<Length> ALTITUDE =
            new Bounds<>("altitude", Length.ofFeet(0), Length.ofFeet(14_000));
    /** PTO of engine, and drawbar of PTO. */
    public static final Ratio TEXTBOOK_SHARE = Ratio.ofPercent(86);

    private static final double LOSS_PER_METER = 0.03 / 304.8;

    private PtoPower() {}

    /** PTO power by the textbook's share; engine power within {@link #POWER}. */
    public static Power fromEngine(Power engine) {
        return new Power(POWER.check(engine) * TEXTBOOK_SHARE.si());
    }

    /** PTO power by transmission, low to high; engine power within {@link #POWER}. */
    public static Spread<Power> fromEngine(Power engine, Transmission transmission) {
        double watts = POWER.check(engine);
        Spread<Ratio> share = transmission.ptoShare();
        return Spread.of(new Power(watts * share.low().si()), new Power(watts * share.high().si()));
    }

    /** PTO power from drawbar power; within {@link #POWER}. */
    public static Power fromDrawbar(Power drawbar) {
        return new Power(POWER.check(drawbar) / TEXTBOOK_SHARE.si());
    }

    /** Drawbar power on concrete from PTO power; within {@link #POWER}. */
    public static Power toDrawbar(Power pto) {
        return new Power(POWER.check(pto) * TEXTBOOK_SHARE.si());
    }

    /** What is left of a power at an altitude, engine without turbocharger; within the two limits. */
    public static Power atAltitude(Power power, Length altitude) {
        return new Power(POWER.check(power) * (1 - LOSS_PER_METER * ALTITUDE.check(altitude)));
    }
}
