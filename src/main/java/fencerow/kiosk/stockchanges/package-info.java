/**
 * What was changed in the stock of late. Read first: {@code StockChangesController}.
 */
@NullMarked
package fencerow.kiosk.stockchanges;

import org.jspecify.annotations.NullMarked;
