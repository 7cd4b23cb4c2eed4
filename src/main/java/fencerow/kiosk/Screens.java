package fencerow.kiosk;

import fencerow.kiosk.attract.AttractController;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.home.HomeController;

/** Which screen belongs to which place. */
final class Screens {
    private Screens() {}

    static Screen make(Place place, Frame frame) {
        if (place instanceof Place.Attract) {
            return new AttractController(frame);
        }
        return new HomeController(frame);
    }
}
