package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hands that touch everything without sense, on the whole kiosk; long with {@code -Dfencerow.monkey=100000}. */
class MonkeyFxTest {
    private static final int ACTIONS = Integer.getInteger("fencerow.monkey", 120);
    private static final long SEED = Long.getLong("fencerow.monkey.seed", 20_261_125);

    @Test
    void nothingThatHandsDoBreaksTheKioskLeavesItOrKeepsAnythingOfAVisit() {
        try (LiveKiosk kiosk = LiveKiosk.of(LiveKiosk.demo()); Monkey monkey = new Monkey(kiosk, SEED)) {
            List<String> figures = monkey.run(ACTIONS);
            figures.forEach(System.out::println);
            assertEquals(Optional.empty(), kiosk.window().ending());
        }
    }
}
