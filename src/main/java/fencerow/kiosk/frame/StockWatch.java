package fencerow.kiosk.frame;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;

/** Looks now and then whether the stock has changed, in the background. */
final class StockWatch {
    private static final System.Logger LOG = System.getLogger(StockWatch.class.getName());
    private static final String DESK = "stock";
    private static final Duration WAIT = Duration.ofSeconds(10);

    private final Clock clock;
    private final BackRoom backRoom;
    private Instant looked;

    StockWatch(Clock clock, BackRoom backRoom) {
        this.clock = clock;
        this.backRoom = backRoom;
        this.looked = clock.instant();
    }

    /** Looks; tells what is to be shown from the next shopper on, if it is anything else than now. */
    void look(Premises now, Consumer<Premises> found) {
        looked = clock.instant();
        backRoom.work(DESK, now.newer()::get, newer -> newer.ifPresent(found),
                failure -> LOG.log(System.Logger.Level.ERROR, Failures.withoutWords(failure)));
    }

    /** Looks if the last look was some time ago, by a clock that may have been set either way. */
    void lookAgain(Premises now, Consumer<Premises> found) {
        if (Duration.between(looked, clock.instant()).abs().compareTo(WAIT) > 0) {
            look(now, found);
        }
    }
}
