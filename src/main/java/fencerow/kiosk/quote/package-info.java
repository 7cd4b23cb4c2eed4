/**
 * Another seller's tractor: told of in three steps, then set beside the best one here, both made ready for the same
 * work. Read first: {@code QuoteController}.
 */
@NullMarked
package fencerow.kiosk.quote;

import org.jspecify.annotations.NullMarked;
