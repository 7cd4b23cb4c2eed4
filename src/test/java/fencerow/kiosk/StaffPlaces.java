package fencerow.kiosk;

import fencerow.desk.Pin;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Place.StaffAdd;
import fencerow.kiosk.frame.Place.StaffUnits;
import fencerow.terms.UnitId;
import java.util.List;
import java.util.function.Consumer;

/** The screens behind the staff door in the states that the walk looks at. */
final class StaffPlaces {
    private static final UnitId USED = new UnitId("u-406");

    private StaffPlaces() {}

    static List<WalkPlace> all() {
        return List.of(
                at("staff-home", new Place.Staff()),
                touched("staff-problems", new Place.Staff(), shown -> tile(shown, "problems")),
                at("staff-units", StaffUnits.ALL),
                at("staff-units-typing", new StaffUnits(StaffUnits.Which.UNKNOWNS, "u", true, 0)),
                at("staff-unit", Place.StaffUnit.of(USED)),
                at("staff-unit-end", new Place.StaffUnit(USED, 1)),
                touched("staff-unit-price", Place.StaffUnit.of(USED), shown -> field(shown, "asking")),
                touched("staff-unit-choice", Place.StaffUnit.of(USED), shown -> field(shown, "status")),
                at("staff-verify", new Place.StaffVerify(USED, 0)),
                at("staff-add-id", StaffAdd.FIRST),
                at("staff-add-model", new StaffAdd(StaffAdd.Step.MODEL, "n-900", "", "new", "")),
                at("staff-add-price", new StaffAdd(StaffAdd.Step.PRICE, "n-900", "nettle-19", "new", "17500")),
                at("staff-changes", new Place.StaffChanges(0)),
                at("staff-report", Place.StaffReport.FIRST),
                at("staff-report-end", new Place.StaffReport(Place.StaffReport.Period.YEAR, 1)));
    }

    private static WalkPlace at(String name, Place place) {
        return touched(name, place, shown -> { });
    }

    private static WalkPlace touched(String name, Place place, Consumer<Shown> then) {
        return new WalkPlace(name, frame -> {
            frame.doors().lock().tryOpen(new Pin(Rooms.PIN), Rooms.PIN);
            frame.go(place);
        }, then);
    }

    private static void tile(Shown shown, String tile) {
        shown.touchBeginning(shown.frame().say("office.tile." + tile + ".name") + ". ");
    }

    private static void field(Shown shown, String column) {
        shown.touchBeginning(shown.frame().say("book.column." + column) + ": ");
    }
}
