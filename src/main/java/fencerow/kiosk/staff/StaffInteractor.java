package fencerow.kiosk.staff;

import fencerow.desk.Pin;
import fencerow.desk.StaffLock;

/** Knows who may come in. */
final class StaffInteractor {
    private static final int LONGEST = 8;

    private final Pin pin;
    private final StaffLock lock;

    StaffInteractor(Pin pin, StaffLock lock) {
        this.pin = pin;
        this.lock = lock;
    }

    /** Takes a digit. */
    void typed(StaffModel model, String digit) {
        model.note().set(StaffModel.Note.ASK);
        if (model.typed().get().length() < LONGEST) {
            model.typed().set(model.typed().get() + digit);
        }
    }

    void backspace(StaffModel model) {
        String all = model.typed().get();
        if (!all.isEmpty()) {
            model.typed().set(all.substring(0, all.length() - 1));
        }
    }

    /** What a try came to. */
    sealed interface Tried {
        record Open() implements Tried {}

        record Wrong() implements Tried {}

        /** Nobody may try for so long. */
        record Wait(long seconds) implements Tried {}
    }

    /** Tries digits; takes a good part of a second. */
    Tried tryOpen(String digits) {
        if (lock.left().isZero() && lock.tryOpen(pin, digits)) {
            return new Tried.Open();
        }
        long seconds = lock.left().plusMillis(999).toSeconds();
        return seconds > 0 ? new Tried.Wait(seconds) : new Tried.Wrong();
    }

    /** Shows what a try came to. */
    void tried(StaffModel model, Tried tried) {
        model.typed().set("");
        if (tried instanceof Tried.Wait wait) {
            model.seconds().set(wait.seconds());
            model.note().set(StaffModel.Note.WAIT);
        } else if (tried instanceof Tried.Wrong) {
            model.note().set(StaffModel.Note.WRONG);
        }
    }
}
