package fencerow.kiosk.print;

import fencerow.kiosk.Fx;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.ScriptedPrinter;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Place;
import fencerow.printing.PrintOutcome;
import fencerow.printing.PrinterTrouble;
import java.util.Optional;
import java.util.function.Consumer;
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

    @Test
    void troubleIsSaidBeforeAnythingIsPrintedAndSavingIsAWayOut() {
        at(new PrintOutcome.Failed(PrinterTrouble.OUT_OF_PAPER), shown -> {
            shown.says("The printer is out of paper.");
            shown.touch("Print it");
            shown.says("The printer is out of paper.");
            shown.touch("Save it for the desk");
            shown.says("Ask at the desk for " + ScriptedPrinter.FILE);
        });
    }

    @Test
    void aJobThatWaitsForPaperCanBeTakenBackAndTriedAgain() {
        at(new PrintOutcome.Queued(7, Optional.of(PrinterTrouble.OUT_OF_PAPER)), shown -> {
            shown.touch("Print it");
            shown.says("The printer is out of paper.");
            shown.touch("Stop printing");
            shown.says("Try again");
            shown.touch("Try again");
            shown.says("Print it");
        });
    }

    @Test
    void aListInTheTrayIsToBeTakenAlong() {
        at(new PrintOutcome.Printed(), shown -> {
            shown.touch("The second sheet. More to check, questions to ask, figures for the haul home.");
            shown.touch("Print it");
            shown.says("Take your list with you now");
        });
    }
}
