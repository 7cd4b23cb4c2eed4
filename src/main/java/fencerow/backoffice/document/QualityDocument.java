package fencerow.backoffice.document;

import fencerow.search.Quality;
import java.math.BigDecimal;

/**
 * What {@code search --evaluate} prints: how good the order of hits is on judged queries.
 *
 * @param queries     how many were asked
 * @param mrr         mean of 1 / rank of the first right hit
 * @param ndcg        mean normalised discounted cumulative gain of the first ten hits
 * @param recall      mean share of right entries among the first ten hits
 * @param zeroResults share of queries without any hit
 */
public record QualityDocument(
        int queries, BigDecimal mrr, BigDecimal ndcg, BigDecimal recall, BigDecimal zeroResults) {
    /** Writes down the figures. */
    public static QualityDocument of(Quality quality) {
        return new QualityDocument(
                quality.queries(),
                Numbers.plain(quality.mrr()),
                Numbers.plain(quality.ndcg()),
                Numbers.plain(quality.recall()),
                Numbers.plain(quality.zeroResults()));
    }
}
