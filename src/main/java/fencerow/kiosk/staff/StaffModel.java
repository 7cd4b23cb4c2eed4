package fencerow.kiosk.staff;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What staff see: the PIN pad, and behind it what there is to know and do. */
final class StaffModel {
    private final ObjectProperty<String> typed = new SimpleObjectProperty<>("");
    private final ObjectProperty<Note> note = new SimpleObjectProperty<>(Note.ASK);
    private final ObjectProperty<Long> seconds = new SimpleObjectProperty<>(0L);
    private final BooleanProperty open = new SimpleBooleanProperty();
    private final String version;
    private final List<String> problems;

    StaffModel(String version, List<String> problems) {
        this.version = version;
        this.problems = List.copyOf(problems);
    }

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

    /** Whether the door is open. */
    BooleanProperty open() {
        return open;
    }

    /** Of the content shown. */
    String version() {
        return version;
    }

    /** With newer content that is therefore not shown. */
    List<String> problems() {
        return problems;
    }
}
