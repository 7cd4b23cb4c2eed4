/**
 * The one window and its one scene: where a shopper is and how they came there, the visit, idling, work in the
 * background. The only package of the kiosk that knows threads. Read first: {@code Frame}.
 */
@NullMarked
package fencerow.kiosk.frame;

import org.jspecify.annotations.NullMarked;
