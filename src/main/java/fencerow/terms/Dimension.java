package fencerow.terms;

import java.util.Locale;

/**
 * What a number measures. Amounts are SI doubles; where amounts are compared exactly (matching) they are whole
 * multiples of {@link #step()}.
 */
public enum Dimension {
    /** Pieces, or a flag as 0 or 1. */
    COUNT("", 1),
    /** Metres, to the millimetre. */
    LENGTH("m", 1e-3),
    /** Kilograms, to the gram. */
    MASS("kg", 1e-3),
    /** Watts. */
    POWER("W", 1),
    /** Cubic metres per second, to the millilitre per minute. */
    FLOW("m3/s", 1e-6 / 60),
    /** Square metres. */
    AREA("m2", 1),
    /** Seconds. */
    TIME("s", 1),
    /** Kelvin, to the hundredth. */
    TEMPERATURE("K", 1e-2),
    /** Metres per second, to the millimetre per second. */
    SPEED("m/s", 1e-3),
    /** Cubic metres, to the millilitre. */
    VOLUME("m3", 1e-6),
    /** Pascals. */
    PRESSURE("Pa", 1),
    /** A share, such as an efficiency; to the hundredth of a percent. */
    RATIO("1", 1e-4),
    /** Radians. */
    ANGLE("rad", 1e-4),
    /** Newtons. */
    FORCE("N", 1),
    /** Newton metres. */
    TORQUE("N m", 1),
    /** Kilograms per cubic metre. */
    DENSITY("kg/m3", 1e-1),
    /** Area worked in a time: square metres per second. */
    WORK_RATE("m2/s", 1e-3),
    /** Mass moved in a time: kilograms per second. */
    MASS_RATE("kg/s", 1e-3),
    /** US dollars, to the cent. */
    MONEY("USD", 1e-2);

    private final String symbol;
    private final double step;

    Dimension(String symbol, double step) {
        this.symbol = symbol;
        this.step = step;
    }

    /** The word used in files and text keys, such as {@code work-rate}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The SI symbol (empty for counts, USD for money). */
    public String symbol() {
        return symbol;
    }

    /** The smallest difference that counts, in the SI unit. */
    public double step() {
        return step;
    }
}
