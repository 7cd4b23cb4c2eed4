/**
 * What is wrong when there is nothing to show. Read first: {@code TroubleView}.
 */
@NullMarked
package fencerow.kiosk.trouble;

import org.jspecify.annotations.NullMarked;
