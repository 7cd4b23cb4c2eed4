/**
 * What the visits of some days tell the showroom, for staff. Read first: {@code ReportController}.
 */
@NullMarked
package fencerow.kiosk.report;

import org.jspecify.annotations.NullMarked;
