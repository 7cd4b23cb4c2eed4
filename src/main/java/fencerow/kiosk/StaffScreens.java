package fencerow.kiosk;

import fencerow.desk.StockDesk;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.office.OfficeController;
import fencerow.kiosk.report.ReportController;
import fencerow.kiosk.staff.StaffController;
import fencerow.kiosk.stockadd.StockAddController;
import fencerow.kiosk.stockchanges.StockChangesController;
import fencerow.kiosk.stocklist.StockListController;
import fencerow.kiosk.stockrow.StockRowController;
import fencerow.kiosk.stockverify.VerifyController;

/** Which screen belongs to which place behind the staff door; the door itself while it is locked. */
final class StaffScreens {
    private StaffScreens() {}

    static Screen make(Place.ForStaff place, Frame frame) {
        if (!frame.doors().lock().isOpen()) {
            return new StaffController(frame, place);
        }
        if (place instanceof Place.StaffReport report) {
            return new ReportController(frame, report);
        }
        return frame.premises().desk()
                .map(desk -> atTheDesk(place, frame, desk))
                .orElseGet(() -> new OfficeController(frame));
    }

    private static Screen atTheDesk(Place.ForStaff place, Frame frame, StockDesk desk) {
        if (place instanceof Place.StaffUnits units) {
            return new StockListController(frame, desk, units);
        }
        if (place instanceof Place.StaffUnit unit) {
            return new StockRowController(frame, desk, unit);
        }
        if (place instanceof Place.StaffVerify verify) {
            return new VerifyController(frame, desk, verify);
        }
        if (place instanceof Place.StaffAdd add) {
            return new StockAddController(frame, desk, add);
        }
        if (place instanceof Place.StaffChanges changes) {
            return new StockChangesController(frame, desk, changes);
        }
        return new OfficeController(frame);
    }
}
