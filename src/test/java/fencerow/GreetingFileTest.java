package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.kiosk.frame.Greeting;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GreetingFileTest {
    private static final Greeting GREETING =
            new Greeting(0.61, Map.of("start", "Toque aqu\u00ed = para empezar", "belief", "#1: \"it fits\""));

    @TempDir
    private Path folder;

    @Test
    void whatWasKeptIsFoundAgainAndANewerOneReplacesIt() {
        var file = new GreetingFile(folder.resolve("data"));
        assertEquals(Optional.empty(), file.find());
        file.keep(GREETING);
        assertEquals(Optional.of(GREETING), file.find());
        Greeting other = new Greeting(0.5, Map.of("start", "Touch"));
        file.keep(other);
        assertEquals(Optional.of(other), file.find());
    }

    @Test
    void whatCannotBeReadGreetsNobody() throws IOException {
        Path file = folder.resolve("greeting.properties");
        for (String broken : new String[] {"", "start=Touch", "panel-metres=wide", "panel-metres=-1",
                "panel-metres=NaN", "start=\\u12", "x".repeat(30_000)}) {
            Files.writeString(file, broken);
            assertEquals(Optional.empty(), new GreetingFile(folder).find(), broken);
        }
    }
}
