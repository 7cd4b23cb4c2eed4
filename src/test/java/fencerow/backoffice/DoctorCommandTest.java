package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.DoctorDocument;
import fencerow.backoffice.document.DoctorDocument.Check;
import fencerow.storage.Server;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a showroom's machine lacks; the machine is a folder of the test's. */
class DoctorCommandTest {
    private static final List<String> NEEDED = List.of(
            "usr/lib/x86_64-linux-gnu/libgtk-3.so.0", "usr/lib/x86_64-linux-gnu/libGL.so.1",
            "usr/lib/x86_64-linux-gnu/libfreetype.so.6", "usr/lib/x86_64-linux-gnu/libpangoft2-1.0.so.0",
            "lib/libfontconfig.so.1", "tmp/.X11-unix/X7", "proc/asound/card0");

    @TempDir
    private Path root;

    private Machine machine(Map<String, String> environment) {
        return new Machine("Linux", root, environment, root.resolve("data"));
    }

    private void put(String file) throws IOException {
        Path path = root.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, "");
    }

    private static String state(Run run, String about) {
        return run.document(DoctorDocument.class).checks().stream()
                .filter(check -> check.about().equals(about))
                .map(Check::state)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aMachineThatHasEverythingIsFineAndTheDemosOwnRemarksDoNotCount() throws IOException {
        for (String file : NEEDED) {
            put(file);
        }
        put("bin/espeak-ng");
        assertTrue(root.resolve("bin/espeak-ng").toFile().setExecutable(true));

        Run run = Run.on(machine(Map.of("DISPLAY", ":7", "PATH", "/bin")), "doctor", "--json").fine();

        for (String about : List.of("display", "libraries", "sound", "speech", "data", "content")) {
            assertEquals("fine", state(run, about), about);
        }
        assertEquals("remark", state(run, "pin"));
        assertEquals("remark", state(run, "printer"));
    }

    @Test
    void eachThingThatIsMissingIsNamedWithWhatToDo() throws IOException {
        for (String file : NEEDED) {
            if (!file.contains("pango")) {
                put(file);
            }
        }
        Run run = Run.on(machine(Map.of("DISPLAY", ":8")), "doctor");

        assertEquals(FencerowCommand.NOT_FINE, run.code());
        assertTrue(run.out().contains("[lacking] display: no X server answers to [:8]"), run.out());
        assertTrue(run.out().contains("libpangoft2-1.0.so.0 is not there"), run.out());
        assertTrue(run.out().contains("install the package libpangoft2-1.0-0"), run.out());
        assertTrue(run.out().contains("[remark] speech: espeak-ng is not there"), run.out());
        assertTrue(run.out().contains("cannot do its work here yet"), run.out());
    }

    @Test
    void aDataFolderThatCannotBeWrittenIsFound() throws IOException {
        put("data");

        Run run = Run.on(machine(Map.of()), "doctor", "--json");

        assertEquals("lacking", state(run, "data"));
        assertEquals("lacking", state(run, "display"));
    }

    @Test
    void brokenContentAPrinterAndADatabaseThatAreNotThereAreFound() throws IOException {
        Path config = Run.copy("kiosk-config", root);
        Path showroom = config.resolve("showroom.yaml");
        Files.writeString(showroom, Files.readString(showroom)
                .replace("printer: \"\"", "printer: \"ipp://127.0.0.1:9/ipp/print\""));
        Run withPrinter = Run.on(machine(Map.of()), "doctor", "--json", "--config", config.toString());
        assertEquals("lacking", state(withPrinter, "printer"));

        // Port 9 is the discard service's (RFC 863), which no machine of ours runs.
        Files.writeString(showroom, Files.readString(showroom)
                .replace("database: \"\"", "database: \"postgresql://127.0.0.1:9/yard\""));
        Run noLogin = Run.on(machine(Map.of()), "doctor", "--config", config.toString());
        assertTrue(noLogin.out().contains("[lacking] database: the login of the database is neither"), noLogin.out());
        Map<String, String> login = Map.of(Server.USER, "peg", Server.PASSWORD, "field-gate-9");
        Run away = Run.on(machine(login), "doctor", "--config", config.toString());
        assertTrue(away.out().contains("[lacking] database: 127.0.0.1:9/yard: the server does not answer\n"
                + "    see whether it runs and can be reached"), away.out());
        assertFalse(away.out().contains("field-gate-9"), away.out());

        Files.writeString(config.resolve("prices.csv"), "nothing\n");
        Run broken = Run.on(machine(Map.of()), "doctor", "--config", config.toString());
        assertEquals(FencerowCommand.NOT_FINE, broken.code());
        assertTrue(broken.out().contains("[lacking] content:"), broken.out());
        assertFalse(broken.out().contains("[fine] content"), broken.out());
    }
}
