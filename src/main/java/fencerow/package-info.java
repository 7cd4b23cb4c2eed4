/**
 * The entry point and the wiring by hand: the one package that sees every part of the house.
 *
 * <p>Clock, random seed, locale and background executor are made here and passed in everywhere else. Being the
 * wiring, it belongs to no part and may use them all. Read first: {@code Main}.
 */
@NullMarked
package fencerow;

import org.jspecify.annotations.NullMarked;
