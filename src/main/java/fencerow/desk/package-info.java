/**
 * The staff's work: edits of the stock, the journal of anonymous counts, and the report on what shoppers do not
 * know.
 *
 * <p>Owns the interfaces that the database stands behind.
 *
 * <p>May use {@code terms}, {@code stock}, {@code needs}, {@code match}. Read first: {@code Desk}.
 */
@Part(floor = 2, mayUse = {"terms", "stock", "needs", "match"})
@NullMarked
package fencerow.desk;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;
