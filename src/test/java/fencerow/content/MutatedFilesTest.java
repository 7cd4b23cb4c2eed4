package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Files spoilt at random: whatever is in them, a reading ends, throws nothing, and says clearly what is wrong and
 * where. Long with {@code -Dfencerow.fuzz=5000}.
 */
class MutatedFilesTest {
    private static final int READINGS = Integer.getInteger("fencerow.fuzz", 40);
    private static final Duration HANGS = Duration.ofMinutes(2);
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 20261125, 7_777_777})
    void aSpoiltFileIsReadToTheEndAndNothingIsThrown(long seed) {
        TinyContent tiny = TinyContent.copyTo(folder);
        var random = new Random(seed);
        List<String> files = tiny.files();
        int bad = 0;
        for (int i = 0; i < READINGS; i++) {
            String file = files.get(random.nextInt(files.size()));
            byte[] before = tiny.bytes(file);
            byte[] spoilt = before;
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                spoilt = Mutation.of(spoilt, random);
            }
            tiny.write(file, spoilt);
            String what = "seed " + seed + ", reading " + i + ", " + file + ": ";
            try {
                Reading<Content> reading = assertTimeoutPreemptively(HANGS, tiny::read, what + "hangs");
                bad += reading instanceof Reading.Bad<Content> ? 1 : 0;
                if (reading instanceof Reading.Bad<Content> read) {
                    Mutation.assertClear(read.problems(), what);
                }
            } catch (RuntimeException | StackOverflowError e) {
                fail(what + new String(spoilt, StandardCharsets.UTF_8), e);
            }
            tiny.write(file, before);
        }
        assertTrue(bad > READINGS / 4, "only " + bad + " spoilt files were noticed with seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{a: ", "- ", "? ", "> ", "* ", "**", "[a](", "\"", "|", "{x, plural, other {"})
    void muchOfTheSameEndsToo(String bit) {
        TinyContent tiny = TinyContent.copyTo(folder);
        String much = bit.repeat(20_000);
        for (String file : List.of("content/jobs.yaml", "content/en/explainers/resale.md", "kiosk-config/stock.csv")) {
            String before = tiny.text(file);
            tiny.write(file, before + much);
            assertTimeoutPreemptively(HANGS, tiny::read, file + " hangs");
            tiny.write(file, before);
        }
    }
}
