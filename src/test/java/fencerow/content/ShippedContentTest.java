package fencerow.content;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShippedContentTest {
    @Test
    void theShippedContentReadsWithoutProblems() {
        Reading<Content> reading =
                new ContentReader().read(Path.of("content"), Path.of("kiosk-config"), Optional.empty());
        if (reading instanceof Reading.Bad<Content> bad) {
            bad.problems().forEach(System.out::println);
            System.out.println(bad.problems().size());
        }
        reading.warnings().forEach(w -> System.out.println("W " + w));
        if (reading instanceof Reading.Bad<Content>) {
            fail("bad");
        }
    }
}
