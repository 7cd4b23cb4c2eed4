/**
 * The database behind the interfaces that {@code desk} and {@code visit} own, and its migrations.
 *
 * <p>The one part that knows SQL.
 *
 * <p>May use {@code terms}, {@code stock}, {@code desk}, {@code visit}. Read first: {@code Store}.
 */
@Part(floor = 4, mayUse = {"terms", "stock", "desk", "visit"})
@NullMarked
package fencerow.storage;

import fencerow.terms.Part;
import org.jspecify.annotations.NullMarked;
