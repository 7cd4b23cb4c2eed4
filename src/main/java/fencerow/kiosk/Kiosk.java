package fencerow.kiosk;

import fencerow.kiosk.frame.KioskWindow;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Speaker;
import fencerow.kiosk.kit.Theme;
import fencerow.kiosk.trouble.TroubleView;
import java.time.Clock;
import java.util.function.Supplier;

/** The way into the kiosk for the program that starts it. */
public final class Kiosk {
    private Kiosk() {}

    /**
     * Runs the kiosk until staff closes it. Starts JavaFX, and so can be called once in a process.
     *
     * @param opening reads what there is to show; called in the background at the start and when staff restarts
     * @param speaker reads aloud
     * @param clock   tells when nobody is here any more
     * @param window  {@code WxH} for an ordinary window, in which the cursor is shown and closing ends the kiosk; blank
     *                for full screen
     * @throws IllegalArgumentException if {@code window} is neither
     */
    public static void run(Supplier<Opening> opening, Speaker speaker, Clock clock, String window) {
        Theme.loadFonts();
        KioskWindow.run(new KioskWindow.Content(opening, Screens::make, TroubleView::of, speaker), clock, window);
    }
}
