package fencerow.match;

import fencerow.terms.ItemId;
import fencerow.terms.PriceRange;
import java.util.List;

/**
 * What to fit and buy so that one unit meets every must-have in every working state.
 *
 * @param lines   one for each item, in the catalogue's order
 * @param minutes of fitting, middle estimate
 */
public record Plan(List<Line> lines, int minutes) {
    /** Nothing to do. */
    public static final Plan EMPTY = new Plan(List.of(), 0);

    /** Copies the lines. */
    public Plan {
        lines = List.copyOf(lines);
    }

    /**
     * One item of a plan.
     *
     * @param item    what
     * @param count   how many, at least 1
     * @param price   of all of them together; zero where the shopper has it or it comes with the unit
     * @param stopgap whether it is a stopgap
     */
    public record Line(ItemId item, int count, PriceRange price, boolean stopgap) {}

    /** All lines together. */
    public PriceRange price() {
        return lines.stream().map(Line::price).reduce(PriceRange.ZERO, PriceRange::plus);
    }

    /** Whether there is nothing to fit or buy; things already owned may still be in use. */
    public boolean isFree() {
        return lines.stream().allMatch(line -> line.price().isZero());
    }

    /** Whether any line is a stopgap. */
    public boolean hasStopgap() {
        return lines.stream().anyMatch(Line::stopgap);
    }
}
