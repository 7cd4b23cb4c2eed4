package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FencerowCommandTest {
    @Test
    void theKioskOpensWithoutACommandAndByItsName() {
        Folders shipped = Folders.below(Path.of(""));

        assertEquals(List.of(shipped), Run.of().fine().launched());
        assertEquals(List.of(shipped), Run.of("kiosk").fine().launched());
    }

    @Test
    void theKioskIsToldWhichFilesToShow() {
        var folders = new Folders(Path.of("a"), Path.of("b"), Optional.of(Path.of("c.csv")), Optional.of("es"));

        assertEquals(
                List.of(folders),
                Run.of("kiosk", "--content", "a", "--config", "b", "--stock", "c.csv", "--language", "es")
                        .fine()
                        .launched());
        assertEquals(
                List.of(folders),
                Run.of("--content", "a", "--config", "b", "--stock", "c.csv", "--language", "es").fine().launched());
    }

    @Test
    void theKioskPrintsNoDocument() {
        Run run = Run.of("kiosk", "--json").failed(FencerowCommand.WRONG_USE);

        assertTrue(run.err().contains("--json"), run.err());
        assertEquals(List.of(), run.launched());
    }

    @Test
    void unknownCommandsAndOptionsAreWrongUseWithAHint() {
        Run command = Run.of("mach").failed(FencerowCommand.WRONG_USE);
        assertTrue(command.err().contains("match"), command.err());
        Run option = Run.of("match", "--anwsers", "x").failed(FencerowCommand.WRONG_USE);
        assertTrue(option.err().contains("Try: fencerow match --help"), option.err());
    }

    @Test
    void helpNamesEveryCommandAndGlobalOption() {
        String help = Run.of("--help").fine().out();

        for (String name : List.of("kiosk", "check", "questions", "search", "match", "checklist", "size",
                "--stock", "--content", "--config", "--language", "--json")) {
            assertTrue(help.contains(name), name);
        }
        assertTrue(Run.of("match", "--help").fine().out().contains("--answers"));
    }

    @Test
    void aMistakeInTheProgramIsToldInOneLine() {
        var err = new StringWriter();
        var surroundings = new Surroundings(Path.of(""), Run.CLOCK, folders -> {
            throw new IllegalStateException("no screen");
        }, new PrintWriter(new StringWriter()), new PrintWriter(err));

        assertEquals(FencerowCommand.NOT_FINE, FencerowCommand.run(surroundings, "kiosk"));
        assertTrue(err.toString().contains("no screen"), err.toString());
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertFalse(err.toString().contains("\tat "), err.toString());
    }
}
