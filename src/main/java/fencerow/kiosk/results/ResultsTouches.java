package fencerow.kiosk.results;

import fencerow.kiosk.frame.Place;
import fencerow.terms.UnitId;

/** What the shopper touched on the results. */
interface ResultsTouches {
    /** Wants to see all of a unit. */
    void open(UnitId unit);

    /** Pins a unit, or lets it go. */
    void pin(UnitId unit);

    /** Sets a must-have aside, or asks for it again. */
    void toggle(String must);

    /** Wants to see every unit. */
    void showAll();

    /** Wants to talk it over. */
    void guide();

    /** Goes somewhere. */
    void go(Place place);
}
