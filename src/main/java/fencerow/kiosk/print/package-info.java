/**
 * Puts the list on paper or into a file, and says in words how that goes. Read first: {@code PrintController}.
 */
@NullMarked
package fencerow.kiosk.print;

import org.jspecify.annotations.NullMarked;
