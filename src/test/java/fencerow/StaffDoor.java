package fencerow;

import fencerow.kiosk.Rooms;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.terms.UnitId;

/** Staff who try to change the demo showroom's price of a unit while nothing can be written. */
final class StaffDoor {
    /** A unit of the demo showroom's at $17,900. */
    static final UnitId UNIT = new UnitId("n-202");

    private StaffDoor() {}

    /** Tries it on screens of its own. On JavaFX's thread; fails unless the screen says these words. */
    static void tryAnotherPrice(Premises premises, String words) {
        Shown shown = Shown.of(premises, 1920, 1080);
        shown.frame().go(Place.StaffUnit.of(UNIT));
        Rooms.PIN.codePoints().mapToObj(Character::toString).forEach(shown::touch);
        shown.touch("Open");
        shown.touchBeginning("Asking price: $17,900");
        shown.touch("delete");
        shown.touch("Keep it");
        shown.says(words);
        shown.frame().leave();
    }
}
