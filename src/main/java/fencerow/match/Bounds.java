package fencerow.match;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The least and the most that units of a kind have in each row beyond what is asked, and what nobody has checked on
 * some of them.
 *
 * @param worst      the least
 * @param best       the most
 * @param unverified what such features may add; those that add nothing here are left out
 */
record Bounds(long[] worst, long[] best, List<Problem.Piece> unverified) {
    /** The bounds of all kinds of a lot. */
    static List<Bounds> of(Lot lot, List<Kind> kinds) {
        var spreads = new HashMap<Spread.Key, Spread>();
        return kinds.stream().map(kind -> of(kind, lot.seen(kind.variety()), spreads)).toList();
    }

    private static Bounds of(Kind kind, int[][] seen, Map<Spread.Key, Spread> spreads) {
        int[] features = kind.layout().features();
        long[] worst = kind.headroom().clone();
        long[] best = worst.clone();
        List<Problem.Piece> unverified = new ArrayList<>();
        for (int f = 0; f < features.length; f++) {
            int feature = features[f];
            Spread spread = spreads.computeIfAbsent(
                    new Spread.Key(kind.contributions(f), seen[feature]), key -> Spread.of(feature, key));
            spread.least().addTo(worst);
            spread.most().addTo(best);
            unverified.addAll(spread.unverified());
        }
        return new Bounds(worst, best, unverified);
    }

    /** The bounds of several kinds together; there is at least one. */
    static Bounds around(List<Bounds> kinds) {
        long[] worst = kinds.get(0).worst().clone();
        long[] best = kinds.get(0).best().clone();
        List<Problem.Piece> unverified = new ArrayList<>();
        for (Bounds kind : kinds) {
            for (int row = 0; row < worst.length; row++) {
                worst[row] = Math.min(worst[row], kind.worst()[row]);
                best[row] = Math.max(best[row], kind.best()[row]);
            }
            unverified.addAll(kind.unverified());
        }
        return new Bounds(worst, best, unverified);
    }

    /** The bounds in some rows, by their places among those. */
    Bounds within(int[] rows) {
        List<Problem.Piece> inside = new ArrayList<>();
        for (Problem.Piece piece : unverified) {
            Contribution adds = new Contribution(Sparse.NOTHING, piece.states()).within(rows);
            if (!adds.open().isEmpty()) {
                inside.add(new Problem.Piece(piece.feature(), adds.open()));
            }
        }
        return new Bounds(within(rows, worst), within(rows, best), inside);
    }

    private static long[] within(int[] rows, long[] all) {
        long[] some = new long[rows.length];
        for (int r = 0; r < some.length; r++) {
            some[r] = all[rows[r]];
        }
        return some;
    }

    /** Cuts all problems of a setup whose rows have these bounds into parts that are apart in each of them. */
    List<Split.Slice> split(Setup setup, Links links) {
        Relevance relevance = Relevance.of(setup, links, worst.clone(), best.clone());
        return Split.of(setup, unverified, relevance);
    }
}
