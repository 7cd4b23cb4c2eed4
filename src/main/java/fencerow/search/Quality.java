package fencerow.search;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * How good a ranking is on judged queries. Any grade above 0 counts as right; a grade is its own gain.
 *
 * @param queries     how many were asked
 * @param mrr         mean of 1 / rank of the first right hit, 0 where there is none
 * @param ndcg        mean of the discounted gain of the first ten hits over that of the best order there could be
 * @param recall      mean share of right entries among the first ten hits (of ten, where more than ten are right)
 * @param zeroResults share of queries without any hit
 */
public record Quality(int queries, double mrr, double ndcg, double recall, double zeroResults) {
    /** Hits that are looked at. */
    public static final int FIRST = 10;

    /** Asks the finder all the queries. */
    public static Quality of(Finder finder, Collection<Judged> judged) {
        return of(judged.stream().map(each -> Asked.of(finder, each)).toList());
    }

    /** Sums up queries asked before. */
    static Quality of(List<Asked> asked) {
        return new Quality(
                asked.size(),
                mean(asked, each -> reciprocalRank(each.gains())),
                mean(asked, each -> ndcg(each.gains(), each.judged().grades().values(), FIRST)),
                mean(asked, each -> recall(each.gains(), each.judged().grades().values(), FIRST)),
                mean(asked, each -> each.empty() ? 1 : 0));
    }

    private static double mean(List<Asked> asked, ToDoubleFunction<Asked> figure) {
        return asked.stream().mapToDouble(figure).average().orElse(0);
    }

    /**
     * A judged query and what came of it.
     *
     * @param gains the grade of each hit, in order; each judgment counts for the first hit it fits
     */
    record Asked(Judged judged, List<Integer> gains, boolean empty) {
        static Asked of(Finder finder, Judged judged) {
            return of(finder.find(Query.of(judged.text(), judged.language())).hits(), judged);
        }

        /** With hits that anything found. */
        static Asked of(List<Hit> hits, Judged judged) {
            Set<String> counted = new HashSet<>();
            List<Integer> gains = hits.stream()
                    .map(hit -> Stream.of(hit.kind().id() + "/" + hit.id(), hit.id())
                            .filter(judged.grades()::containsKey)
                            .filter(counted::add)
                            .findFirst()
                            .map(key -> judged.grades().getOrDefault(key, 0))
                            .orElse(0))
                    .toList();
            return new Asked(judged, gains, hits.isEmpty());
        }
    }

    /** 1 / rank of the first gain above 0, or 0. */
    static double reciprocalRank(List<Integer> gains) {
        for (int i = 0; i < gains.size(); i++) {
            if (gains.get(i) > 0) {
                return 1.0 / (i + 1);
            }
        }
        return 0;
    }

    /**
     * Normalised discounted cumulative gain, with gain / log2(rank + 1).
     *
     * @param gains in the order found
     * @param ideal all gains there are
     * @param first how many ranks count
     */
    static double ndcg(Collection<Integer> gains, Collection<Integer> ideal, int first) {
        double best = dcg(ideal.stream().sorted(Comparator.reverseOrder()).toList(), first);
        return best > 0 ? dcg(List.copyOf(gains), first) / best : 0;
    }

    /** Discounted cumulative gain of the first ranks. */
    static double dcg(List<Integer> gains, int first) {
        double sum = 0;
        for (int i = 0; i < Math.min(first, gains.size()); i++) {
            sum += gains.get(i) / (Math.log(i + 2) / Math.log(2));
        }
        return sum;
    }

    /** Share of the right ones that are among the first. */
    static double recall(List<Integer> gains, Collection<Integer> ideal, int first) {
        long right = ideal.stream().filter(grade -> grade > 0).count();
        long found = gains.stream().limit(first).filter(grade -> grade > 0).count();
        return right == 0 ? 1 : (double) found / Math.min(first, right);
    }
}
