/**
 * All units for staff, to look for, change and add to. Read first: {@code StockListController}.
 */
@NullMarked
package fencerow.kiosk.stocklist;

import org.jspecify.annotations.NullMarked;
