/**
 * The shopper's own lines, composed from needs, verdicts and beliefs in walk-around order, and the choice of what
 * goes on page one.
 *
 * <p>Lines are data; words and paper come later.
 *
 * <p>May use {@code terms}, {@code explainers}, {@code stock}, {@code needs}, {@code match}, {@code quiz},
 * {@code sizing}. Read first: {@code ChecklistLine}.
 */
@Part(floor = 3, mayUse = {"terms", "explainers", "stock", "needs", "match", "quiz", "sizing"})
@NullMarked
package fencerow.checklist;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;
