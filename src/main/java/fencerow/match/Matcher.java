package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import java.util.Collection;
import java.util.List;

/** Holds units against a shopper's needs. Immutable; may be used from any thread. */
public final class Matcher {
    private final Helpful.Index index;

    /** Matches with this catalogue's items and prices. */
    public Matcher(Catalogue catalogue) {
        this.index = new Helpful.Index(catalogue);
    }

    /** One unit held against the needs: verdict, cheapest plan or true causes, score and ready-to-work price. */
    public Match match(Unit unit, Needs needs) {
        return new Board(index, needs).match(unit);
    }

    /** All units held against the needs, in the order given. */
    public List<Match> match(Collection<Unit> units, Needs needs) {
        var board = new Board(index, needs);
        return units.stream().map(board::match).toList();
    }
}
