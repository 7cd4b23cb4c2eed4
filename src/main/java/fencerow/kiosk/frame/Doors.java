package fencerow.kiosk.frame;

import fencerow.desk.StaffLock;

/**
 * What reaches from a frame to the kiosk as a whole.
 *
 * @param restart reads the content again; for staff
 * @param close   ends the kiosk; for staff
 * @param failed  told of each failure that ended a visit; too many in a short time end the process
 * @param lock    of the staff door; outlasts the visit, or wrong PINs would be forgotten with it
 */
public record Doors(Runnable restart, Runnable close, Runnable failed, StaffLock lock) {
    /** The place that is opened: who goes elsewhere than behind the staff door locks it behind them. */
    Place passing(Place place) {
        if (!(place instanceof Place.ForStaff)) {
            lock.close();
        }
        return place;
    }
}
