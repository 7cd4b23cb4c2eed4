package fencerow.kiosk;

import fencerow.kiosk.attract.AttractGreeter;
import fencerow.kiosk.frame.Ending;
import fencerow.kiosk.frame.KioskWindow;
import fencerow.kiosk.frame.Openings;
import fencerow.kiosk.frame.Speaker;
import fencerow.kiosk.kit.Theme;
import fencerow.kiosk.trouble.TroubleView;
import java.time.Clock;

/** The way into the kiosk for the program that starts it. */
public final class Kiosk {
    private Kiosk() {}

    /**
     * Runs the kiosk until it ends. Starts JavaFX, and so can be called once in a process.
     *
     * @param openings reads what there is to show, at the start, when staff restarts, and when it has changed
     * @param speaker  reads aloud
     * @param clock    tells when nobody is here any more; a steady one, that nobody puts right
     * @param window   {@code WxH} for an ordinary window, in which the cursor is shown and closing ends the kiosk;
     *                 blank for full screen
     * @return why it ended
     * @throws IllegalArgumentException if {@code window} is neither
     */
    public static Ending run(Openings openings, Speaker speaker, Clock clock, String window) {
        Theme.loadFonts();
        var content = new KioskWindow.Content(openings, Screens::make, TroubleView::of, new AttractGreeter(), speaker);
        return KioskWindow.run(content, clock, window);
    }
}
