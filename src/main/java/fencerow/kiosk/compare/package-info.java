/**
 * Two or three units beside each other, what differs first. Read first: {@code CompareInteractor}.
 */
@NullMarked
package fencerow.kiosk.compare;

import org.jspecify.annotations.NullMarked;
