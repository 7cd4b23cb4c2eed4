package fencerow.kiosk.kit;

/** Something a finger holds down before it answers; a column that is dragged calls the touch off. */
interface Held {
    /** Calls off the touch in progress. */
    void letGo();
}
