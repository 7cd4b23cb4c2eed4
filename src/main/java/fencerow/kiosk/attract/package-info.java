/**
 * What passers-by see: wrong beliefs and the truth, in turn; a touch anywhere starts.
 *
 * <p>Read first: {@code AttractController}.
 */
@NullMarked
package fencerow.kiosk.attract;

import org.jspecify.annotations.NullMarked;
