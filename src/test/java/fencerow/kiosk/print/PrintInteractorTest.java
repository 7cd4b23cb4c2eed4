package fencerow.kiosk.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.kiosk.frame.ListPrinter;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PrintInteractorTest {
    private static final PrintInteractor PRINT =
            new PrintInteractor(Rooms.premises().showroom(), Rooms.premises().texts().get("en"));

    @Test
    void everyReasonHasWordsOfItsOwnAndAWayOut() {
        Set<String> words = new HashSet<>();
        for (ListPrinter.Reason reason : ListPrinter.Reason.values()) {
            PrintModel.Failed failed = assertInstanceOf(
                    PrintModel.Failed.class, PRINT.printed(new ListPrinter.Printed.NotNow(reason)));
            assertTrue(words.add(failed.words()), failed.words());
            assertTrue(!failed.what().isBlank());
        }
        assertTrue(words.add(PRINT.broken().words()));
    }

    @Test
    void aSavedListIsAskedForByItsName() {
        PrintModel.Done done = assertInstanceOf(
                PrintModel.Done.class, PRINT.printed(new ListPrinter.Printed.Saved("list-7.pdf", 2)));
        assertTrue(done.what().contains("list-7.pdf"), done.what());
        assertTrue(done.words().contains("2"), done.words());
    }

    @Test
    void theListIsAlwaysPrintedAndTheFurtherSheetOnlyWhenWanted() {
        assertEquals(Set.of(ListPrinter.Part.LIST), PrintInteractor.parts(false));
        assertEquals(Set.of(ListPrinter.Part.LIST, ListPrinter.Part.FURTHER_SHEET), PrintInteractor.parts(true));
    }
}
