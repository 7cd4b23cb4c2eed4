/**
 * What staff can do, as tiles; what is wrong with the content. A further screen for staff joins by one line in
 * {@code OfficeModel.Tile}. Read first: {@code OfficeController}.
 */
@NullMarked
package fencerow.kiosk.office;

import org.jspecify.annotations.NullMarked;
