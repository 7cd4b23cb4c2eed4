package fencerow.kiosk.frame;

/**
 * What reaches from a frame to the kiosk as a whole.
 *
 * @param restart reads the content again; for staff
 * @param close   ends the kiosk; for staff
 * @param failed  told of each failure that ended a visit; too many in a short time end the process
 */
public record Doors(Runnable restart, Runnable close, Runnable failed) {}
