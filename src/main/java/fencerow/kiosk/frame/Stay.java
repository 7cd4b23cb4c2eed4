package fencerow.kiosk.frame;

import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Tally;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/** Counts what is looked at during one visit: screens, explainers, lists. Confined to the screen's thread. */
public final class Stay {
    private static final long LONGEST_SECONDS = 600;

    private final Clock clock;
    private Tally tally = Tally.NONE;
    private String place = "";
    private Instant since;

    Stay(Clock clock) {
        this.clock = clock;
        this.since = clock.instant();
    }

    /** Another screen is shown. What passers-by and staff see is not counted. */
    void shown(Place next) {
        leave();
        boolean counts = !(next instanceof Place.Attract) && !(next instanceof Place.ForStaff);
        place = counts ? next.key() : "";
        if (counts) {
            count(Counter.of(Kind.SHOWN, place));
        }
        if (next instanceof Place.Topic topic) {
            countOnce(Counter.of(Kind.READ, topic.topic().value()));
        }
    }

    /** The shopper went away so long ago without a word; that time is nobody's. */
    void goneFor(Duration quiet) {
        since = since.plus(quiet);
    }

    private void leave() {
        // A clock that was set meanwhile tells nothing; a screen nobody left for long was not looked at all the time.
        long seconds = Math.min(LONGEST_SECONDS, Duration.between(since, clock.instant()).toSeconds());
        if (!place.isEmpty() && seconds > 0) {
            tally = tally.plus(Counter.of(Kind.SECONDS, place), seconds);
        }
        since = clock.instant();
    }

    /** Something happened that is counted. */
    public void count(Counter counter) {
        tally = tally.plus(counter, 1);
    }

    /** Something happened of which only counts whether it did. */
    public void countOnce(Counter counter) {
        if (tally.count(counter) == 0) {
            count(counter);
        }
    }

    /** All that was counted; from here on it counts anew. */
    Tally end() {
        leave();
        Tally all = tally;
        tally = Tally.NONE;
        place = "";
        return all;
    }
}
