package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import fencerow.TestScreens.Part;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Screens that are plugged in, unplugged, and set to other sizes in the middle of a visit: no part of any shows what is
 * behind the kiosk, and the visit goes on. Runs under {@code -Pwm}; rows for the table of {@link ChaosFxTest}.
 */
class ScreensTest {
    private static final int PATIENCE_SECONDS = 60;
    private static final String ANSWER = "Clear snow";
    private static final String ANSWERED = "1 job";
    private static final Part WIDE = new Part(0, 0, 0, 1280, 800);
    private static final Part BESIDE = new Part(1, 1280, 0, 1024, 768);

    @TempDir
    private Path folder;

    @BeforeEach
    void needsScreens() {
        if (!Boolean.getBoolean("fencerow.wm")) {
            abort("SKIPPED: no screen was unplugged; run with -Pwm");
        }
        List<String> missing = TestDesktop.missing(List.of("Xvnc", "openbox", "xdotool", "xsetroot"));
        if (!missing.isEmpty()) {
            abort("SKIPPED: no screen was unplugged; not installed: " + missing);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void everyScreenIsCoveredWhateverIsDoneToThemInAVisit(boolean managed) throws Exception {
        try (var screens = new TestScreens(folder, WIDE.width(), WIDE.height());
                TestDesktop desktop = TestDesktop.on(screens.display(), folder)) {
            if (managed) {
                desktop.manageWindows();
            }
            screens.set(List.of(WIDE, BESIDE));
            desktop.run("xsetroot", "-solid", String.format(Locale.ROOT, "#%06x", WatchedKiosk.STRAY));
            for (int i = 0; screens.picture().share(WatchedKiosk.STRAY) < 0.9; i++) {
                assertTrue(i < PATIENCE_SECONDS * 2, "what is behind is not to be seen before");
                TimeUnit.MILLISECONDS.sleep(500);
            }

            Watched kiosk = Watched.of(desktop.watched("kiosk", folder.resolve("data").toString()));
            kiosk.touch("Touch anywhere", desktop);
            covers(kiosk, screens, List.of(WIDE, BESIDE));
            desktop.touch(1800, 400);
            kiosk.touch("Find a tractor that fits", desktop);
            kiosk.touch(ANSWER, desktop);
            kiosk.waitFor(Watched.can(ANSWERED), "an answer that counts");
            String before = words(List.of(WIDE, BESIDE));

            for (List<Part> parts : List.of(
                    List.of(WIDE),
                    List.of(new Part(0, 0, 0, 1024, 768)),
                    List.of(new Part(0, 0, 0, 1080, 1920)),
                    List.of(new Part(0, 0, 0, 1920, 1080)),
                    List.of(new Part(0, 0, 0, 1920, 1080), new Part(2, 0, 1080, 800, 600)),
                    List.of(WIDE, BESIDE))) {
                screens.set(parts);
                covers(kiosk, screens, parts);
                kiosk.waitFor(Watched.can(ANSWERED).and(Watched.can(ANSWER)), "the visit where it was");
                kiosk.touch("Help", desktop);
                kiosk.waitFor(Watched.can("Close"), "an answer to a touch");
                kiosk.touch("Close", desktop);
                kiosk.waitFor(Watched.can("Close").negate(), "an answer to a second touch");
                ChaosFxTest.row("screens " + before + ", then " + words(parts) + (managed ? ", window manager" : ""),
                        "the kiosk on the first, an empty one on any other; the visit goes on");
                before = words(parts);
            }
        }
    }

    private static String words(List<Part> parts) {
        return String.join(" and ", parts.stream().map(part -> part.width() + "x" + part.height()).toList());
    }

    private static void covers(Watched kiosk, TestScreens screens, List<Part> parts) throws Exception {
        String size = parts.get(0).width() + "x" + parts.get(0).height();
        kiosk.waitFor(state -> state.get(0).contains(" 0,0 " + size + " of " + size), "covering " + words(parts));
        // Where no screen is, nothing needs to be covered and nobody can look.
        double nowhere = 1 - parts.stream().mapToDouble(part -> part.width() * part.height()).sum()
                / (screens.picture().width() * screens.picture().height());
        for (int i = 0; Math.abs(screens.picture().share(WatchedKiosk.STRAY) - nowhere) > 1e-9; i++) {
            assertTrue(i < PATIENCE_SECONDS * 2, () -> "of " + words(parts) + " something is not covered");
            TimeUnit.MILLISECONDS.sleep(500);
        }
        assertEquals(nowhere, screens.picture().share(WatchedKiosk.STRAY), 1e-9);
    }
}
