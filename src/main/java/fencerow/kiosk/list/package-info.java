/**
 * The shopper's list before it is printed, in walk-around order, each line with why it is there; lines can be struck
 * out. Read first: {@code ListController}.
 */
@NullMarked
package fencerow.kiosk.list;

import org.jspecify.annotations.NullMarked;
