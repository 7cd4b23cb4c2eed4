package fencerow.sizing.catalogue;

import fencerow.sizing.Bounds;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import java.util.Optional;
import java.util.function.Function;

/**
 * A number that a calculation asks for.
 *
 * @param <Q>    the quantity
 * @param bounds what is allowed; a value outside is refused
 * @param kind   makes the quantity from an amount
 * @param usual  what is usual; a value outside is accepted with a warning
 * @param preset the value or range taken where none is given; empty where the calculation does without
 * @param step   by how much a stepper moves
 */
public record Measured<Q extends Quantity>(
        Bounds<Q> bounds, Function<Amount, Q> kind, Spread<Q> usual, Optional<Spread<Q>> preset, Q step)
        implements Parameter {

    /** A number with these limits and step, all of which is usual; without preset, so optional. */
    public static <Q extends Quantity> Measured<Q> of(Bounds<Q> bounds, Function<Amount, Q> kind, Q step) {
        return new Measured<>(bounds, kind, Spread.of(bounds.min(), bounds.max()), Optional.empty(), step);
    }

    /** A whole number of pieces. */
    public static Measured<Amount> count(String id, long min, long max, long preset) {
        Bounds<Amount> bounds = new Bounds<>(id, Amount.count(min), Amount.count(max));
        return of(bounds, Function.<Amount>identity(), Amount.count(1)).preset(Amount.count(preset));
    }

    /** An amount of US dollars; without preset, so optional. */
    public static Measured<Amount> money(String id, double min, double max, double step) {
        Bounds<Amount> bounds = new Bounds<>(id, dollars(min), dollars(max));
        return of(bounds, Function.<Amount>identity(), dollars(step));
    }

    /** With the value taken where none is given. */
    public Measured<Q> preset(Q value) {
        return preset(value, value);
    }

    /** With the range taken where nothing is given. */
    public Measured<Q> preset(Q low, Q high) {
        return new Measured<>(bounds, kind, usual, Optional.of(Spread.of(low, high)), step);
    }

    /** With what is usual. */
    public Measured<Q> usual(Q low, Q high) {
        return new Measured<>(bounds, kind, Spread.of(low, high), preset, step);
    }

    /** The same under another name. */
    public Measured<Q> as(String otherId) {
        return new Measured<>(bounds.as(otherId), kind, usual, preset, step);
    }

    @Override
    public String id() {
        return bounds.what();
    }

    /** What it measures. */
    public Dimension dimension() {
        return bounds.min().dimension();
    }

    /** An amount of US dollars. */
    static Amount dollars(double dollars) {
        return new Amount(Dimension.MONEY, dollars);
    }
}
