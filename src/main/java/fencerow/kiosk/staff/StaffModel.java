package fencerow.kiosk.staff;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What staff see: the PIN pad, and behind it what there is to know and do. */
final class StaffModel {
    private final ObjectProperty<String> typed = new SimpleObjectProperty<>("");
    private final BooleanProperty wrong = new SimpleBooleanProperty();
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

    /** Whether the last PIN was not the right one. */
    BooleanProperty wrong() {
        return wrong;
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
