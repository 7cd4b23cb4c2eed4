package fencerow;

import fencerow.desk.ComeBackBook;
import fencerow.desk.ComeBackCode;
import fencerow.desk.StaffLock;
import fencerow.kiosk.frame.ComeBack;
import fencerow.printing.Copies;
import fencerow.visit.Remembered;
import fencerow.visit.ReturnCode;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.time.Clock;
import java.util.Optional;

/** Keeps visits in the database for who wants to come back to them. For any thread. */
final class ComeBackDesk implements ComeBack {
    private static final int MOST_IN_AN_HOUR = 60;

    private final ComeBackBook book;
    private final int days;
    private final StaffLock lock;
    private final Clock clock;
    private Copies made = Copies.none(Integer.MAX_VALUE, MOST_IN_AN_HOUR);

    /**
     * Opens it.
     *
     * @param days how long visits are kept
     * @param lock counts wrong codes; of its own, and older than any content shown
     */
    ComeBackDesk(ComeBackBook book, int days, StaffLock lock, Clock clock) {
        this.book = book;
        this.days = days;
        this.lock = lock;
        this.clock = clock;
    }

    @Override
    public int days() {
        return days;
    }

    @Override
    public Optional<ReturnCode> keep(Visit visit) {
        if (!mayMakeOne()) {
            return Optional.empty();
        }
        ComeBackBook.Kept kept = book.keep(Remembered.write(visit), days);
        return Optional.of(new ReturnCode(kept.code().written(), kept.lastDay()));
    }

    private synchronized boolean mayMakeOne() {
        boolean may = made.findRefusal(clock.instant()).isEmpty();
        made = may ? made.with(clock.instant()) : made;
        return may;
    }

    @Override
    public Found find(ComeBackCode code, Showroom showroom) {
        if (!lock.left().isZero()) {
            return new Found.Wait(lock.left());
        }
        Optional<Remembered> found = lock.findIfOpen(() -> book.find(code))
                .map(text -> Remembered.read(text, showroom));
        return found.isPresent() ? new Found.Back(found.get()) : new Found.Nothing();
    }
}
