package fencerow.kiosk.frame;

/** Makes the screen of a place. */
@FunctionalInterface
public interface ScreenMaker {
    /** A new screen of the place, for the frame's present visit, language and text size. */
    Screen make(Place place, Frame frame);
}
