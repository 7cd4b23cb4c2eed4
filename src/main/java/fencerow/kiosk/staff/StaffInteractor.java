package fencerow.kiosk.staff;

/** Knows who may come in. */
final class StaffInteractor {
    private static final int LONGEST = 8;

    private final String pin;

    StaffInteractor(String pin) {
        this.pin = pin;
    }

    /** Takes a digit; a PIN that is complete opens the door. */
    void typed(StaffModel model, String digit) {
        model.wrong().set(false);
        String all = model.typed().get() + digit;
        if (all.equals(pin)) {
            model.typed().set("");
            model.open().set(true);
        } else if (all.length() >= Math.min(LONGEST, Math.max(1, pin.length()))) {
            model.typed().set("");
            model.wrong().set(true);
        } else {
            model.typed().set(all);
        }
    }

    void backspace(StaffModel model) {
        String all = model.typed().get();
        if (!all.isEmpty()) {
            model.typed().set(all.substring(0, all.length() - 1));
        }
    }
}
