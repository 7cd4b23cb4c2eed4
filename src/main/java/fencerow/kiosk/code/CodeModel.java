package fencerow.kiosk.code;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What is typed so far, and what came of it. */
final class CodeModel {
    private final ObjectProperty<String> typed;
    private final ObjectProperty<String> note = new SimpleObjectProperty<>("");
    private final ObjectProperty<List<String>> back = new SimpleObjectProperty<>(List.of());

    CodeModel(String typed) {
        this.typed = new SimpleObjectProperty<>(typed);
    }

    /** The characters, without hyphens. */
    ObjectProperty<String> typed() {
        return typed;
    }

    /** What is wrong with them, or that one has to wait; blank if there is nothing to say. */
    ObjectProperty<String> note() {
        return note;
    }

    /** What to say now that the visit is back, each in a sentence; empty until it is. */
    ObjectProperty<List<String>> back() {
        return back;
    }
}
