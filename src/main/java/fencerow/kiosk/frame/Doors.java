package fencerow.kiosk.frame;

import fencerow.desk.StaffLock;

/**
 * What staff can do with the kiosk as a whole.
 *
 * @param restart reads the content again
 * @param close   ends the kiosk
 * @param lock    of the door; outlasts the visit, or wrong PINs would be forgotten with it
 */
public record Doors(Runnable restart, Runnable close, StaffLock lock) {}
