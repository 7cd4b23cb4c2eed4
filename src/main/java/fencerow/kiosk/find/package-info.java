/**
 * The search: what is found while one types. Read first: {@code FindController}.
 */
@NullMarked
package fencerow.kiosk.find;

import org.jspecify.annotations.NullMarked;
