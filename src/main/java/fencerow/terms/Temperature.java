package fencerow.terms;

/**
 * A temperature, kept in kelvins.
 *
 * @param si kelvins; finite
 */
public record Temperature(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Temperature {
        Finite.require(Dimension.TEMPERATURE, si);
    }

    /** From an amount that measures a temperature. */
    public static Temperature of(Amount amount) {
        return new Temperature(Finite.of(Dimension.TEMPERATURE, amount));
    }

    /** Kelvins. */
    public static Temperature ofKelvins(double value) {
        return new Temperature(UnitOfMeasure.KELVIN.toSi(value));
    }

    /** Degrees Celsius. */
    public static Temperature ofCelsius(double value) {
        return new Temperature(UnitOfMeasure.CELSIUS.toSi(value));
    }

    /** Degrees Fahrenheit. */
    public static Temperature ofFahrenheit(double value) {
        return new Temperature(UnitOfMeasure.FAHRENHEIT.toSi(value));
    }

    /** Kelvins. */
    public double toKelvins() {
        return UnitOfMeasure.KELVIN.fromSi(si);
    }

    /** Degrees Celsius. */
    public double toCelsius() {
        return UnitOfMeasure.CELSIUS.fromSi(si);
    }

    /** Degrees Fahrenheit. */
    public double toFahrenheit() {
        return UnitOfMeasure.FAHRENHEIT.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.TEMPERATURE;
    }
}
