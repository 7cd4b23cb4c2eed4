/**
 * A new unit: its number, what it is, what is asked for it; the rest is filled in on its own page. Read first:
 * {@code StockAddController}.
 */
@NullMarked
package fencerow.kiosk.stockadd;

import org.jspecify.annotations.NullMarked;
