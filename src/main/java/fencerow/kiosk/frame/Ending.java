package fencerow.kiosk.frame;

/** How a kiosk came to its end. */
public enum Ending {
    /** Staff closed it. */
    CLOSED,
    /** It can't go on as it is and wants to be started again. */
    AGAIN,
    /** The same, and its screen doesn't answer, so that nothing can be tidied up. */
    HANGING
}
