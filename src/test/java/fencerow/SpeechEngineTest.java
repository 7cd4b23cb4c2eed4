package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fencerow.kiosk.frame.Speaker.Loudness;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** How the speech program is started and stopped; a script stands in for it and writes down what it got. */
@DisabledOnOs(OS.WINDOWS)
class SpeechEngineTest {
    @TempDir
    private Path folder;

    private SpeechEngine engine(String script) throws IOException {
        Path program = folder.resolve("engine");
        Files.writeString(program, "#!/bin/sh\n" + script);
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
        return new SpeechEngine(Optional.of(program));
    }

    @Test
    void wordsGoInOnStandardInputAndNeverStandInTheListOfProcesses() throws Exception {
        Path got = folder.resolve("got");
        engine("echo \"$@\" > '" + got + "'; cat >> '" + got + "'").say("es", "¿Qué hace? ¡Año!", Loudness.NORMAL);
        assertEquals("-v es-419 -a 100 -s 150 --stdin\n¿Qué hace? ¡Año!", Files.readString(got));
    }

    @Test
    void aProgramThatGivesUpIsAFailure() throws IOException {
        SpeechEngine engine = engine("cat > /dev/null; exit 3");
        IOException failure = assertThrows(IOException.class, () -> engine.say("en", "words", Loudness.LOUD));
        assertEquals("[espeak-ng] gave up with code 3; check the sound", failure.getMessage());
    }

    @Test
    void wordsThatAreNotWantedAnyMoreStop() throws IOException {
        SpeechEngine engine = engine("exec sleep 600");
        Thread.currentThread().interrupt();
        assertThrows(InterruptedException.class, () -> engine.say("en", "words", Loudness.NORMAL));
        ProcessHandle.current().children()
                .filter(child -> child.info().arguments().filter(all -> List.of(all).contains("600")).isPresent())
                .forEach(child -> child.onExit().join());
    }

    @Test
    void withoutAProgramThereIsNoVoice() {
        assertFalse(new SpeechEngine(Optional.empty()).isThere());
    }
}
