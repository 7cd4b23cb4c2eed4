package fencerow.kiosk.staff;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** The PIN pad. */
final class StaffModel {
    private final ObjectProperty<String> typed = new SimpleObjectProperty<>("");
    private final ObjectProperty<Note> note = new SimpleObjectProperty<>(Note.ASK);
    private final ObjectProperty<Long> seconds = new SimpleObjectProperty<>(0L);

    /** Digits typed so far. */
    ObjectProperty<String> typed() {
        return typed;
    }

    /** What is said above the pad. */
    enum Note {
        ASK("staff.ask"),
        WRONG("staff.wrong"),
        /** After several wrong PINs. */
        WAIT("staff.wait");

        private final String key;

        Note(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    /** What is said above the pad. */
    ObjectProperty<Note> note() {
        return note;
    }

    /** How long nobody may try, where that is said. */
    ObjectProperty<Long> seconds() {
        return seconds;
    }
}
