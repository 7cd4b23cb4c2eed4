package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The kiosk on a desktop with a window manager, where it should not be run but may be: no key of the window manager's,
 * and no other window, takes the screen from it. The keys are those that Debian's configuration of openbox binds, and
 * what other desktops commonly bind (from memory). Runs under {@code -Pwm}.
 */
class WindowManagerTest {
    private static final int PATIENCE_SECONDS = 60;
    private static final List<String> KEYS = List.of(
            "alt+F4", "F11", "F10", "Escape", "alt+Tab", "alt+shift+Tab", "ctrl+alt+Tab", "alt+Escape",
            "ctrl+alt+Right", "ctrl+alt+Down", "super+F3", "super+d", "shift+alt+Left", "ctrl+alt+Delete", "ctrl+q",
            "ctrl+w", "super", "Menu", "alt+space Escape", "alt+space c", "alt+space n", "alt+space r Escape");

    @TempDir
    private Path folder;

    @BeforeEach
    void needsADesktop() {
        if (!Boolean.getBoolean("fencerow.wm")) {
            abort("SKIPPED: no window manager was tried; run with -Pwm");
        }
        if (!TestDesktop.missing().isEmpty()) {
            abort("SKIPPED: no window manager was tried; not installed: " + TestDesktop.missing());
        }
    }

    @Test
    void noKeyOfAWindowManagerTakesTheScreenFromTheKiosk() throws Exception {
        try (TestDesktop desktop = TestDesktop.start(folder)) {
            // That the keys do get through the window manager: it closes any other window.
            Process stray = stray(desktop);
            desktop.press("alt+F4");
            assertTrue(stray.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "Alt+F4 closes an ordinary window");

            stray(desktop);
            Watched kiosk = Watched.of(desktop.watched("kiosk", folder.resolve("data").toString()));
            kiosk.touch("Touch anywhere", desktop);
            for (String keys : KEYS) {
                desktop.press(keys);
                covers(kiosk, desktop, keys);
                kiosk.touch("Help", desktop);
                kiosk.waitFor(Watched.can("Close"), "an answer to a touch after " + keys);
                kiosk.touch("Close", desktop);
                kiosk.waitFor(Watched.can("Close").negate(), "an answer to a second touch after " + keys);
            }
        }
    }

    @Test
    void aWindowThatComesLaterStaysBehind() throws Exception {
        try (TestDesktop desktop = TestDesktop.start(folder)) {
            Watched kiosk = Watched.of(desktop.watched("kiosk", folder.resolve("data").toString()));
            kiosk.waitFor(Watched.can("Touch anywhere"), "the kiosk");
            Watched stray = Watched.of(desktop.watched("stray"));
            stray.waitFor(state -> state.get(0).contains(" of "), "another window");
            TimeUnit.SECONDS.sleep(1);
            covers(kiosk, desktop, "another window");
        }
    }

    /** A window that fills the screen. */
    private static Process stray(TestDesktop desktop) throws IOException, InterruptedException {
        Process process = desktop.watched("stray");
        for (int i = 0; desktop.share(WatchedKiosk.STRAY) < 0.9; i++) {
            assertTrue(i < PATIENCE_SECONDS * 5, "the stray window did not come");
            TimeUnit.MILLISECONDS.sleep(200);
        }
        return process;
    }

    private static void covers(Watched kiosk, TestDesktop desktop, String what)
            throws IOException, InterruptedException {
        String size = TestDesktop.WIDTH + "x" + TestDesktop.HEIGHT;
        kiosk.waitFor(state -> state.get(0).equals("full first 0,0 " + size + " of " + size)
                && desktop.share(WatchedKiosk.STRAY) == 0, "covering the screen after " + what);
        assertEquals(0, desktop.share(WatchedKiosk.STRAY), "of another window is to be seen after " + what);
    }
}
