package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.desk.Counter;
import fencerow.desk.Tally;
import fencerow.kiosk.HandClock;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** How long screens are looked at. */
class StayTest {
    private final HandClock clock = new HandClock();
    private final Stay stay = new Stay(clock);

    private static long seconds(Tally tally, Place place) {
        return tally.count(Counter.of(Counter.Kind.SECONDS, place.key()));
    }

    @Test
    void theTimeInWhichNobodyWasHereAnyMoreIsNotCounted() {
        stay.shown(new Place.Home());
        clock.pass(Duration.ofSeconds(5));
        stay.shown(Place.Topics.FIRST);
        clock.pass(Duration.ofSeconds(20));
        clock.pass(Duration.ofSeconds(90));
        stay.goneFor(Duration.ofSeconds(90));

        Tally all = stay.end();

        assertEquals(5, seconds(all, new Place.Home()));
        assertEquals(20, seconds(all, Place.Topics.FIRST));
    }

    @Test
    void aWaitLongerThanTheScreenWasShownCountsNothing() {
        stay.shown(new Place.Home());
        clock.pass(Duration.ofSeconds(30));
        stay.goneFor(Duration.ofSeconds(45));

        assertEquals(0, seconds(stay.end(), new Place.Home()));
    }
}
