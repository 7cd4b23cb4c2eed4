/**
 * A salesperson and a shopper talk it over: must-haves and budget to change beside live results, and the way back to
 * where the shopper was. Read first: {@code GuideController}.
 */
@NullMarked
package fencerow.kiosk.guide;

import org.jspecify.annotations.NullMarked;
