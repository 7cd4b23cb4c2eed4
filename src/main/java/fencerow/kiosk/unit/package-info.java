/**
 * Everything on one unit: what it costs and why, how it is made ready or why not, and what is on it in walk-around
 * order. Read first: {@code UnitController}.
 */
@NullMarked
package fencerow.kiosk.unit;

import org.jspecify.annotations.NullMarked;
