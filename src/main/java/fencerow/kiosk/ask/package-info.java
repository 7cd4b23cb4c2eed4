/**
 * The questions about the work, one a screen: nothing preset, "not sure" and "skip" always there, and beside them how
 * many tractors still fit. Read first: {@code AskController}.
 */
@NullMarked
package fencerow.kiosk.ask;

import org.jspecify.annotations.NullMarked;
