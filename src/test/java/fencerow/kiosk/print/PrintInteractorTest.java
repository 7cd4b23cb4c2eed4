package fencerow.kiosk.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.kiosk.frame.ListPrinter.Part;
import fencerow.kiosk.frame.ListPrinter.Printed;
import fencerow.printing.PrintOutcome;
import fencerow.printing.PrinterTrouble;
import fencerow.quiz.Belief;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.OptionId;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PrintInteractorTest {
    private static final PrintInteractor PRINT =
            new PrintInteractor(Rooms.premises().showroom(), Rooms.premises().texts().get("en"), false);
    private static final PrintInteractor SAVE =
            new PrintInteractor(Rooms.premises().showroom(), Rooms.premises().texts().get("en"), true);

    private static Printed job(PrinterTrouble waitsFor) {
        return new Printed(new PrintOutcome.Queued(7, Optional.of(waitsFor)), 2);
    }

    @Test
    void everyTroubleHasWordsOfItsOwnAndSavingIsAWayOut() {
        Set<String> words = new HashSet<>();
        for (PrinterTrouble trouble : PrinterTrouble.values()) {
            var printed = new Printed(new PrintOutcome.Failed(trouble), 0);
            PrintModel.Failed failed = assertInstanceOf(PrintModel.Failed.class, PRINT.printed(printed));
            assertTrue(words.add(failed.words() + failed.what()), failed.words());
            assertFalse(failed.what().isBlank());
            assertTrue(failed.canSave());
        }
        assertTrue(words.add(PRINT.broken().words()));
    }

    @Test
    void whoCannotSaveHereIsNotToldToSave() {
        var notSaved = new Printed(new PrintOutcome.NotSaved(), 0);
        assertFalse(assertInstanceOf(PrintModel.Failed.class, SAVE.printed(notSaved)).canSave());
        var tooMany = new Printed(new PrintOutcome.TooMany(Optional.of(Duration.ofMinutes(9))), 0);
        PrintModel.Failed failed = assertInstanceOf(PrintModel.Failed.class, PRINT.printed(tooMany));
        assertFalse(failed.canSave());
        assertTrue(failed.what().contains("9 minutes"), failed.what());
    }

    @Test
    void aJobThatWaitsForPaperCanBeTakenBackAndOneThatOnlySoonMayIsWaitedFor() {
        assertInstanceOf(PrintModel.Waiting.class, PRINT.printed(job(PrinterTrouble.OUT_OF_PAPER)));
        assertInstanceOf(PrintModel.Working.class, PRINT.printed(job(PrinterTrouble.LOW_ON_INK)));
    }

    @Test
    void aSavedListIsAskedForByItsName() {
        var saved = new Printed(new PrintOutcome.Saved(Path.of("lists", "list-7.pdf")), 2);
        PrintModel.Done done = assertInstanceOf(PrintModel.Done.class, PRINT.printed(saved));
        assertTrue(done.what().contains("list-7.pdf"), done.what());
        assertTrue(done.words().contains("2"), done.words());
    }

    @Test
    void theListIsAlwaysPrintedAndTheRestOnlyWhenWanted() {
        assertEquals(Set.of(Part.LIST), PrintInteractor.parts(Set.of()));
        assertEquals(Set.of(Part.LIST, Part.SIT_TEST), PrintInteractor.parts(Set.of(Part.SIT_TEST)));
    }

    @Test
    void explanationsAreOfferedOnlyToThoseWhoHadSomethingWrong() {
        assertFalse(offered(Visit.NEW).contains(Part.EXPLANATIONS));
        assertTrue(offered(wrongAboutSomething()).contains(Part.EXPLANATIONS));
        assertTrue(offered(Visit.NEW).containsAll(Set.of(Part.FURTHER_SHEET, Part.DELIVERY_DAY, Part.FIRST_YEAR)));
    }

    private static Visit wrongAboutSomething() {
        QuizQuestion question = Rooms.premises().showroom().quiz().questions().get(0);
        OptionId wrong = question.options().stream()
                .filter(option -> !option.equals(question.key()))
                .findFirst()
                .orElseThrow();
        return Visit.NEW.believed(question.id(), Belief.of(wrong));
    }

    private static List<Part> offered(Visit visit) {
        return PRINT.ready(visit, Set.of(), List.of(), Optional.empty()).more().stream()
                .map(PrintModel.Extra::part)
                .toList();
    }
}
