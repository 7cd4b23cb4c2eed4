/**
 * A shopper's requirements against one unit: findings, equip plan and verdict; then the ranking, what would change
 * the answer, and the next question to ask.
 *
 * <p>The plan is exact and its reasons are data, so that one other part can put them into words.
 *
 * <p>May use {@code terms}, {@code stock}, {@code needs}, {@code sizing}. Read first: {@code Verdict}.
 */
@Part(floor = 2, mayUse = {"terms", "stock", "needs", "sizing"})
@NullMarked
package fencerow.match;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;
