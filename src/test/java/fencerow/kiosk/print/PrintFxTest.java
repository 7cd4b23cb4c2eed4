package fencerow.kiosk.print;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.ScriptedPrinter;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Place;
import fencerow.printing.PrintOutcome;
import fencerow.printing.PrinterTrouble;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.Test;

/** What the shopper reads and can do while a printer has its troubles. */
class PrintFxTest {
    private static void at(PrintOutcome printer, Consumer<Shown> look) {
        Fx.on(() -> {
            Shown shown = Shown.of(Rooms.withPrinter(new ScriptedPrinter(printer)), 1920, 1080);
            shown.frame().go(new Place.Print());
            shown.layOut();
            try {
                look.accept(shown);
            } finally {
                shown.frame().leave();
            }
            return true;
        });
    }

    private static String words(Shown shown) {
        shown.layOut();
        List<String> all = new ArrayList<>();
        collect(shown.scene().getRoot(), all);
        return String.join("\n", all);
    }

    private static void collect(Node node, List<String> all) {
        if (node instanceof Labeled label) {
            all.add(label.getText());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, all));
        }
    }

    private static void says(Shown shown, String words) {
        String all = words(shown);
        assertTrue(all.contains(words), () -> "[" + words + "] is not on the screen, only:\n" + all);
    }

    @Test
    void troubleIsSaidBeforeAnythingIsPrintedAndSavingIsAWayOut() {
        at(new PrintOutcome.Failed(PrinterTrouble.OUT_OF_PAPER), shown -> {
            says(shown, "The printer is out of paper.");
            shown.touch("Print it");
            says(shown, "The printer is out of paper.");
            shown.touch("Save it for the desk");
            says(shown, "Ask at the desk for " + ScriptedPrinter.FILE);
        });
    }

    @Test
    void aJobThatWaitsForPaperCanBeTakenBackAndTriedAgain() {
        at(new PrintOutcome.Queued(7, Optional.of(PrinterTrouble.OUT_OF_PAPER)), shown -> {
            shown.touch("Print it");
            says(shown, "The printer is out of paper.");
            shown.touch("Stop printing");
            says(shown, "Try again");
            shown.touch("Try again");
            says(shown, "Print it");
        });
    }

    @Test
    void aListInTheTrayIsToBeTakenAlong() {
        at(new PrintOutcome.Printed(), shown -> {
            shown.touch("The second sheet. More to check, questions to ask, figures for the haul home.");
            shown.touch("Print it");
            says(shown, "Take your list with you now");
        });
    }
}
