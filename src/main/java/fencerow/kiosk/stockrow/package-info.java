/**
 * One unit as it is written in the stock book, every column of it to be changed, and whether it can be bought. Read
 * first: {@code StockRowController}.
 */
@NullMarked
package fencerow.kiosk.stockrow;

import org.jspecify.annotations.NullMarked;
