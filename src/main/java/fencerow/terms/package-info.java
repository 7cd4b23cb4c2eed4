/**
 * The trade's words as types: features, machine classes, capabilities, and the small records that hold money and
 * quantities.
 *
 * <p>Quantities are held in SI units; each record has a factory and an accessor for every unit the trade uses.
 *
 * <p>Uses no other part. Read first: {@code Feature}.
 */
@Part(floor = 0)
@NullMarked
package fencerow.terms;

import org.jspecify.annotations.NullMarked;
