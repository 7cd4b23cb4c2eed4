package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.content.ShippedContent;
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

    private static Run opening(KioskLauncher kiosk) {
        var out = new StringWriter();
        var err = new StringWriter();
        var surroundings =
                new Surroundings(
                        Path.of(""), Run.CLOCK, Run.MACHINE, ShippedContent::read, kiosk, config -> config,
                        new PrintWriter(out), new PrintWriter(err));
        int code = FencerowCommand.run(surroundings, "kiosk");
        return new Run(code, out.toString(), err.toString(), List.of());
    }

    @Test
    void aKioskThatCannotOpenSaysWhy() {
        Run noScreen = opening(folders -> {
            throw new KioskLauncher.NoScreenException("no screen; start a desktop");
        });
        Run window = opening(folders -> {
            throw new IllegalArgumentException("window size [abc] is not a size; give WxH");
        });

        assertEquals("fencerow: no screen; start a desktop", noScreen.failed(FencerowCommand.NOT_FINE).err().strip());
        assertTrue(window.failed(FencerowCommand.WRONG_USE).err().contains("[abc]"), window.err());
    }

    @Test
    void aMistakeInTheProgramIsToldInOneLine() {
        Run run = opening(folders -> {
            throw new IllegalStateException("out of step");
        });

        run.failed(FencerowCommand.NOT_FINE);
        assertTrue(run.err().contains("out of step"), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertFalse(run.err().contains("\tat "), run.err());
    }
}
