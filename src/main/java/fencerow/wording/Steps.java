package fencerow.wording;

import fencerow.sizing.catalogue.Measured;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import fencerow.terms.UnitOfMeasure;
import java.util.Optional;

/**
 * The amounts that a stepper goes through: whole numbers of a round step in the shopper's own units, and the two ends
 * of what is allowed.
 */
public final class Steps {
    /** Temperatures are not stepped by a share of their size; five degrees of either scale. */
    private static final double DEGREES = 5;
    private static final double SLACK = 1e-6;

    private final Amount least;
    private final Amount most;
    private final Amount start;
    private final UnitOfMeasure unit;
    private final double step;

    private Steps(Amount least, Amount most, Amount start, UnitOfMeasure unit, double step) {
        this.least = least;
        this.most = most;
        this.start = start;
        this.unit = unit;
        this.step = step;
    }

    /** For an input of a calculation, in US customary or metric units. */
    public static <Q extends Quantity> Steps of(Measured<Q> measured, boolean metric) {
        Amount by = measured.step().amount();
        boolean degrees = by.dimension() == Dimension.TEMPERATURE;
        UnitOfMeasure unit = ShownUnit.of(by, metric);
        double step = degrees ? DEGREES : round(TradeUnits.fromSi(unit, by.si()));
        return new Steps(measured.bounds().min().amount(), measured.bounds().max().amount(),
                middle(measured.preset().orElse(measured.usual()).amounts()), unit, step);
    }

    /** The nearest of 1, 2, 5 times a power of ten. */
    private static double round(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step) + SLACK));
        double share = step / power;
        double lead = share < Math.sqrt(2) ? 1 : share < Math.sqrt(10) ? 2 : share < Math.sqrt(50) ? 5 : 10;
        return lead * power;
    }

    private static Amount middle(Spread<Amount> range) {
        return new Amount(range.low().dimension(), (range.low().si() + range.high().si()) / 2);
    }

    /** The smallest that is allowed. */
    public Amount least() {
        return least;
    }

    /** The largest that is allowed. */
    public Amount most() {
        return most;
    }

    /**
     * The amount so many steps on; from the middle of what is taken or usual where nothing is set.
     *
     * @param now   what is set or taken, as a range where it is one
     * @param steps negative for less
     */
    public Amount moved(Optional<Spread<Amount>> now, int steps) {
        double from = TradeUnits.fromSi(unit, now.map(Steps::middle).orElse(start).si()) / step;
        double place = steps > 0 ? Math.floor(from + SLACK) + steps : Math.ceil(from - SLACK) + steps;
        double si = TradeUnits.toSi(unit, place * step);
        return new Amount(least.dimension(), Math.max(least.si(), Math.min(most.si(), si)));
    }
}
