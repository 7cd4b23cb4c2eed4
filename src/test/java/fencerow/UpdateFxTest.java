package fencerow;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.LiveKiosk;
import fencerow.kiosk.frame.Place;
import fencerow.terms.TopicId;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The owner changes a price in its text file while the kiosk is on and somebody stands in front of it. */
class UpdateFxTest {
    private static final Place GUARD = Place.Topic.of(new TopicId("grille-guard"));

    @TempDir
    private Path folder;

    @Test
    void aChangedPriceIsShownFromTheNextVisitOn() {
        DemoShowroom demo = DemoShowroom.in(folder);
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
        var wiring = new KioskWiring(clock, "", config -> demo.data());
        try (LiveKiosk kiosk = LiveKiosk.of(new KioskFiles(wiring, demo.folders()))) {
            Shopper shopper = new Shopper(kiosk.shown(), kiosk.window().stage());
            shopper.touch("Touch anywhere to start");
            go(kiosk);
            shopper.waitForWords("$120");

            kiosk.waitForOffer(() ->
                    demo.change("prices.csv", "grille-guard-kit,,120,500", "grille-guard-kit,,135,500"));
            assertTrue(shopper.words().stream().anyMatch(each -> each.contains("$120")), "nothing changes under them");

            shopper.touch("Start over");
            go(kiosk);
            shopper.waitForWords("$135");
            assertFalse(shopper.words().stream().anyMatch(each -> each.contains("$120")), "the old price is gone");
        }
    }

    private static void go(LiveKiosk kiosk) {
        Fx.on(() -> {
            kiosk.frame().go(GUARD);
            return true;
        });
    }
}
