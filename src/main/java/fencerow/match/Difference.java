package fencerow.match;

import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Why one unit costs more ready to work than another, line by line, by the middle of each price. Whole dollars; a line
 * may be a dollar off its own middle so that the lines add up to the whole exactly.
 *
 * @param lines those that differ, in the order of a bill; what the first costs more, below zero where it costs less
 * @param more  what the first costs more in all
 */
public record Difference(List<Line> lines, Money more) {
    private static final int HALF_CENTS_IN_A_DOLLAR = 200;

    /** Copies the lines. */
    public Difference {
        lines = List.copyOf(lines);
    }

    /** What a line is about. */
    public enum Kind {
        /** Cash price of the machine. */
        ASKING("asking"),
        /** From the factory. */
        FREIGHT("freight"),
        /** Making it ready to drive. */
        SETUP("setup"),
        /** Paperwork and the like. */
        FEES("fees"),
        /** Something planned for one or both. */
        ITEM("item"),
        /** Putting right what is noted. */
        CATCH_UP("catch-up"),
        /** What the sellers allow for the shopper's own tractor. */
        TRADE("trade");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** The word used in text keys. */
        public String id() {
            return id;
        }
    }

    /**
     * One line.
     *
     * @param item what is planned; empty for the other kinds
     * @param more whole dollars that the first costs more
     */
    public record Line(Kind kind, Optional<ItemId> item, Money more) {}

    /** Of the two; empty where one of them cannot be made ready. */
    public static Optional<Difference> of(Match first, Match second) {
        return first.verdict().hasPlan() && second.verdict().hasPlan()
                ? Optional.of(new Bill(first, second).difference())
                : Optional.empty();
    }

    /** Adds up; lives for one difference. */
    private static final class Bill {
        private final Match first;
        private final Match second;
        private final List<Line> lines = new ArrayList<>();
        private long halfCents;
        private long dollars;

        Bill(Match first, Match second) {
            this.first = first;
            this.second = second;
        }

        Difference difference() {
            var one = first.price().asking();
            var other = second.price().asking();
            exact(Kind.ASKING, one.asking(), other.asking());
            exact(Kind.FREIGHT, one.freight(), other.freight());
            exact(Kind.SETUP, one.setup(), other.setup());
            exact(Kind.FEES, one.fees(), other.fees());
            Plan plan = first.findPlan().orElse(Plan.EMPTY);
            Plan otherPlan = second.findPlan().orElse(Plan.EMPTY);
            Set<ItemId> items = new LinkedHashSet<>();
            plan.lines().forEach(line -> items.add(line.item()));
            otherPlan.lines().forEach(line -> items.add(line.item()));
            items.forEach(item -> add(Kind.ITEM, Optional.of(item), price(plan, item), price(otherPlan, item)));
            add(Kind.CATCH_UP, Optional.empty(), first.price().catchUp(), second.price().catchUp());
            exact(Kind.TRADE, second.price().trade(), first.price().trade());
            return new Difference(lines, Money.ofDollars(dollars));
        }

        private static PriceRange price(Plan plan, ItemId item) {
            return plan.lines().stream()
                    .filter(line -> line.item().equals(item))
                    .map(Plan.Line::price)
                    .reduce(PriceRange.ZERO, PriceRange::plus);
        }

        private void exact(Kind kind, Money one, Money other) {
            add(kind, Optional.empty(), PriceRange.exactly(one), PriceRange.exactly(other));
        }

        /** Rounds the sum so far, not the line, so that no rounding adds up. */
        private void add(Kind kind, Optional<ItemId> item, PriceRange one, PriceRange other) {
            halfCents += one.low().cents() + one.high().cents() - other.low().cents() - other.high().cents();
            long sum = (long) Math.rint(halfCents / (double) HALF_CENTS_IN_A_DOLLAR);
            if (sum != dollars) {
                lines.add(new Line(kind, item, Money.ofDollars(sum - dollars)));
            }
            dollars = sum;
        }
    }
}
