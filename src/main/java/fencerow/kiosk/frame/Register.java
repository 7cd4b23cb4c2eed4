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

    /** A visit ended; one in which nothing was done is none. */
    void ended(Premises premises, Visit visit) {
        backRoom.errand(premises.printer()::visitEnded);
        Tally seen = stay.end();
        if (!visit.equals(Visit.NEW) || seen.of(Counter.Kind.SHOWN).size() > 1) {
            backRoom.errand(() -> count(premises, visit, seen));
        }
    }

    private static void count(Premises premises, Visit visit, Tally seen) {
        try {
            premises.journal().accept(Departure.count(premises.showroom(), visit).plus(seen));
        } catch (RuntimeException e) {
            Failures.log(e);
        }
    }
}
