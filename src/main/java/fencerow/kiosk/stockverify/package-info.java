/**
 * What nobody has checked on one unit, in the order of a walk around it, one touch each. Read first:
 * {@code VerifyController}.
 */
@NullMarked
package fencerow.kiosk.stockverify;

import org.jspecify.annotations.NullMarked;
