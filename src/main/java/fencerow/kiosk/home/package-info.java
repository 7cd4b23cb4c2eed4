/**
 * The three doors, and the search. Read first: {@code HomeController}.
 */
@NullMarked
package fencerow.kiosk.home;

import org.jspecify.annotations.NullMarked;
