/**
 * What the staff's screens over the stock book share: cells in words, changes with all that can come of them. Read
 * first: {@code CellWords}, then {@code Clerk}.
 */
@NullMarked
package fencerow.kiosk.bookkeeping;

import org.jspecify.annotations.NullMarked;
