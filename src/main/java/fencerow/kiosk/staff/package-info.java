/**
 * Behind a PIN: what is wrong with the content, restart, close. Read first: {@code StaffController}.
 */
@NullMarked
package fencerow.kiosk.staff;

import org.jspecify.annotations.NullMarked;
