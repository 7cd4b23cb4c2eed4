/**
 * The one place where typed reasons, lines and amounts become words in the shopper's language.
 *
 * <p>Screen, paper and command line all ask here, so they cannot differ.
 *
 * <p>May use {@code terms}, {@code explainers}, {@code stock}, {@code needs}, {@code sizing}, {@code match},
 * {@code quiz}, {@code checklist}, {@code visit}, {@code search}. Read first: {@code Wording}.
 */
@Part(floor = 3, mayUse = {
    "terms", "explainers", "stock", "needs", "sizing", "match", "quiz", "checklist", "visit", "search"
})
@NullMarked
package fencerow.wording;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;
