package fencerow.kiosk.guide;

import fencerow.kiosk.frame.Place;
import fencerow.terms.UnitId;
import java.util.Optional;

/** What was touched while talking it over. */
interface GuideTouches {
    void toggle(String must);

    void budget(Optional<Long> by);

    void open(UnitId unit);

    void pin(UnitId unit);

    void go(Place place);

    /** Prints the salesperson's sheet of the pinned units. */
    void unitsSheet();

    void handBack(boolean asItWas);
}
