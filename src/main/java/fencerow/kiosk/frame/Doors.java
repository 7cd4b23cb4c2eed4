package fencerow.kiosk.frame;

/**
 * What staff can do with the kiosk as a whole.
 *
 * @param restart reads the content again
 * @param close   ends the kiosk
 */
public record Doors(Runnable restart, Runnable close) {}
