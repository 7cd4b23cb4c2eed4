package fencerow.wording;

import fencerow.match.Match;
import fencerow.stock.AskingPrice;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.List;

/**
 * What a unit costs, line by line, in words.
 *
 * @param lines what is asked, and what comes on top
 * @param sum   ready to work; as it stands where there is no plan
 */
public record Bill(List<Line> lines, Line sum) {
    /** Copies the lines. */
    public Bill {
        lines = List.copyOf(lines);
    }

    /** What for, and how much. */
    public record Line(String what, String amount) {}

    /** The bill of a match. Lines of nothing are left out, the plan's excepted. */
    public static Bill of(Match match, Phrases phrases) {
        Texts texts = phrases.texts();
        AskingPrice price = match.price().asking();
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(texts.get("price.asking"), phrases.money(price.asking())));
        add(lines, texts.get("price.freight"), price.freight(), phrases);
        add(lines, texts.get("price.setup"), price.setup(), phrases);
        add(lines, texts.get("price.fees"), price.fees(), phrases);
        PriceRange catchUp = match.price().catchUp();
        if (!catchUp.isZero()) {
            lines.add(new Line(texts.get("price.catch-up"), phrases.range(catchUp)));
        }
        boolean ready = match.verdict().hasPlan();
        if (ready) {
            PriceRange plan = match.price().plan();
            lines.add(new Line(texts.get("price.plan"),
                    plan.isZero() ? texts.get("price.free") : phrases.range(plan)));
        }
        Money trade = match.price().trade();
        if (trade.cents() > 0) {
            lines.add(new Line(texts.get("price.trade"), phrases.money(Money.ZERO.minus(trade))));
        }
        return new Bill(lines, new Line(texts.get(ready ? "price.ready" : "price.as-it-stands"),
                phrases.range(match.price().total())));
    }

    private static void add(List<Line> lines, String what, Money amount, Phrases phrases) {
        if (amount.cents() > 0) {
            lines.add(new Line(what, phrases.money(amount)));
        }
    }
}
