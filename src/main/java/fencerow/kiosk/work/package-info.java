/**
 * "Work it out": all calculations by area, and one calculation at a time, its answer live while its numbers are
 * stepped. Read first: {@code SheetController}.
 */
@NullMarked
package fencerow.kiosk.work;

import org.jspecify.annotations.NullMarked;
