package fencerow.kiosk.frame;

import fencerow.desk.Counter;
import fencerow.desk.Tally;
import fencerow.visit.Departure;
import fencerow.visit.Visit;
import java.time.Clock;

/** Counts what happens during a visit, and hands over what it came to when it ends; tells the printer of the end. */
final class Register {
    private final Stay stay;
    private final BackRoom backRoom;

    Register(Clock clock, BackRoom backRoom) {
        this.stay = new Stay(clock);
        this.backRoom = backRoom;
    }

    Stay stay() {
        return stay;
    }

    /** Something went wrong that no screen could deal with: written down and counted, both without words. */
    void failed(Throwable failure) {
        Failures.log(failure);
        stay.count(counter(failure));
    }

    /** A visit ended; one in which nothing was done is none. */
    void ended(Premises premises, Visit visit) {
        backRoom.errand(premises.printer()::visitEnded);
        Tally seen = stay.end();
        Tally failures = Tally.of(seen.of(Counter.Kind.FAILED));
        if (!visit.equals(Visit.NEW) || seen.of(Counter.Kind.SHOWN).size() > 1) {
            backRoom.errand(() -> premises.counts().ended(departure(premises, visit).plus(seen)));
        } else if (!failures.equals(Tally.NONE)) {
            backRoom.errand(() -> premises.counts().ended(failures));
        }
    }

    /** What the visit comes to; where that is what fails, as much as there is to say. */
    private static Tally departure(Premises premises, Visit visit) {
        try {
            return Departure.count(premises.showroom(), visit);
        } catch (RuntimeException e) {
            Failures.log(e);
            return Tally.NONE.plus(Counter.of(Counter.Kind.VISIT, ""), 1).plus(counter(e), 1);
        }
    }

    private static Counter counter(Throwable failure) {
        return Counter.of(Counter.Kind.FAILED, failure.getClass().getSimpleName());
    }
}
