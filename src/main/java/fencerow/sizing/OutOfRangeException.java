package fencerow.sizing;

import fencerow.terms.Amount;

/** A value for which a calculation is not valid. Holds what is wrong and what is allowed, so that words can be made. */
public final class OutOfRangeException extends IllegalArgumentException {
    private final String what;
    private final transient Amount value;
    private final transient Amount min;
    private final transient Amount max;

    /**
     * Names the value and the allowed range.
     *
     * @param what  what the value is, as an id ({@code wheelbase})
     * @param value the refused value
     * @param min   the smallest allowed
     * @param max   the largest allowed
     */
    public OutOfRangeException(String what, Amount value, Amount min, Amount max) {
        super(what + " " + text(value) + " is outside the valid range; give " + text(min) + " to " + text(max));
        this.what = what;
        this.value = value;
        this.min = min;
        this.max = max;
    }

    /** What the value is, as an id. */
    public String what() {
        return what;
    }

    /** The refused value. */
    public Amount value() {
        return value;
    }

    /** The smallest allowed value. */
    public Amount min() {
        return min;
    }

    /** The largest allowed value. */
    public Amount max() {
        return max;
    }

    private static String text(Amount amount) {
        double size = Math.abs(amount.si());
        double digits = size == 0 ? 1 : Math.pow(10, 3 - Math.floor(Math.log10(size)));
        double rounded = Math.rint(amount.si() * digits) / digits;
        String number = rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
        return (number + " " + amount.dimension().symbol()).strip();
    }
}
