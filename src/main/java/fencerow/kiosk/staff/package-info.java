/**
 * The door to what staff do, which a PIN opens. Read first: {@code StaffController}.
 */
@NullMarked
package fencerow.kiosk.staff;

import org.jspecify.annotations.NullMarked;
