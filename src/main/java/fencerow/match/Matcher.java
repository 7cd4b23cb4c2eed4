package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import java.util.Collection;
import java.util.List;

/** Holds units against a shopper's needs. Immutable; may be used from any thread. */
public final class Matcher {
    private final Index index;

    /** Matches with this catalogue's items and prices. */
    public Matcher(Catalogue catalogue) {
        this.index = new Index(catalogue);
    }

    /** Lays the units out, to be matched for many shoppers or after every answer. */
    public Lot lot(Collection<Unit> units) {
        return new Lot(index, units);
    }

    /** One unit held against the needs: verdict, cheapest plan or true causes, score and ready-to-work price. */
    public Match match(Unit unit, Needs needs) {
        return match(List.of(unit), needs).get(0);
    }

    /** All units held against the needs, in the order given. */
    public List<Match> match(Collection<Unit> units, Needs needs) {
        return new Board(lot(units), needs, Solved.nothing()).matches();
    }
}
