package fencerow.terms;

/** A number with what it measures, kept in the SI unit of its {@link Dimension}. */
public interface Quantity {
    /** What is measured. */
    Dimension dimension();

    /** The number in the dimension's SI unit; finite. */
    double si();

    /** The same as an amount, for places where the dimension is only known from data. */
    default Amount amount() {
        return new Amount(dimension(), si());
    }
}
