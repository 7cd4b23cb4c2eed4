/**
 * Typing the code of an earlier visit, to go on where it left off. Read first: {@code CodeController}.
 */
@NullMarked
package fencerow.kiosk.code;

import org.jspecify.annotations.NullMarked;
