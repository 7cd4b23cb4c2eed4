package fencerow.terms;

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
    /** US dollars, to the cent. */
    MONEY("USD", 1e-2);

    private final String symbol;
    private final double step;

    Dimension(String symbol, double step) {
        this.symbol = symbol;
        this.step = step;
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
