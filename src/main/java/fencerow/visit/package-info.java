/**
 * One shopper's stay: everything answered so far, as an immutable value.
 *
 * <p>A visit that has ended is forgotten; nothing in it can identify anyone.
 *
 * <p>May use {@code terms}, {@code stock}, {@code needs}, {@code match}, {@code quiz}, {@code checklist},
 * {@code sizing}, {@code desk}. Read first: {@code Visit}.
 */
@Part(floor = 3, mayUse = {"terms", "stock", "needs", "match", "quiz", "checklist", "sizing", "desk"})
@NullMarked
package fencerow.visit;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;
