/**
 * Our own controls and the theme. Everything touchable is a {@code Touch}; words come from {@code Words}, buttons from
 * {@code Buttons}, arrangements from {@code Boxes}, {@code Columns}, {@code Wrap} and {@code Column}. Sizes and colours
 * are the theme's, in which a millimetre is a millimetre on the panel. Knows nothing of places and visits.
 */
@NullMarked
package fencerow.kiosk.kit;

import org.jspecify.annotations.NullMarked;
