package fencerow.kiosk.frame;

import fencerow.desk.Counter;
import fencerow.desk.Tally;
import fencerow.visit.Departure;
import fencerow.visit.Visit;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;

/** The back door to the stock: looks whether it has changed, and tells what visits came to. In the background. */
final class StockWatch {
    private static final String DESK = "stock";
    private static final String JOURNAL = "journal";
    private static final Duration WAIT = Duration.ofSeconds(10);

    private final Clock clock;
    private final BackRoom backRoom;
    private final Stay stay;
    private Instant looked;

    StockWatch(Clock clock, BackRoom backRoom) {
        this.clock = clock;
        this.backRoom = backRoom;
        this.stay = new Stay(clock);
        this.looked = clock.instant();
    }

    /** Counts what is looked at. */
    Stay stay() {
        return stay;
    }

    /** Looks; tells what is to be shown from the next shopper on, if it is anything else than now. */
    void look(Premises now, Consumer<Premises> found) {
        looked = clock.instant();
        backRoom.work(DESK, now.newer()::get, newer -> newer.ifPresent(found),
                Failures::log);
    }

    /** A visit ended: what it came to is counted; one in which nothing was done is none. */
    void ended(Premises premises, Visit visit) {
        Tally seen = stay.end();
        if (visit.equals(Visit.NEW) && seen.of(Counter.Kind.SHOWN).size() <= 1) {
            return;
        }
        backRoom.work(JOURNAL, () -> {
            premises.journal().accept(Departure.count(premises.showroom(), visit).plus(seen));
            return true;
        }, done -> { }, Failures::log);
    }

    /** Looks if the last look was some time ago, by a clock that may have been set either way. */
    void lookAgain(Premises now, Consumer<Premises> found) {
        if (Duration.between(looked, clock.instant()).abs().compareTo(WAIT) > 0) {
            look(now, found);
        }
    }
}
