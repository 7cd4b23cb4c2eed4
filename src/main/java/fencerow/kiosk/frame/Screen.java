package fencerow.kiosk.frame;

import javafx.scene.Node;

/** A screen, as the frame sees it: made when a place is opened, left for good when the shopper goes elsewhere. */
public interface Screen {
    /** What is shown between the heading and the strip at the foot. The same node at each call. */
    Node view();

    /** The heading, in the shopper's language. */
    String title();

    /** The place as it is now, for instance with how far it was scrolled; opening it again shows the same. */
    Place place();

    /** How many words there are to read; the more, the longer the kiosk waits before it asks whether anyone is here. */
    default int words() {
        return 0;
    }

    /** Whether the screen fills the whole scene, without heading and strip. */
    default boolean bare() {
        return false;
    }

    /** The shopper goes elsewhere; called once. */
    default void left() {}
}
