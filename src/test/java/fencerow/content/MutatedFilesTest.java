package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files spoilt at random: whatever is in them, a reading ends, throws nothing, and names the spoilt file if any. */
class MutatedFilesTest {
    private static final int READINGS = 40;
    private static final Duration HANGS = Duration.ofMinutes(2);
    private static final List<String> BITS = List.of(
            ":", "- ", "[", "]", "{", "}", "\"", "'", "#", "&a ", "*a ", "!t ", "|", ">", "---\n", "...\n", "\n", "\t",
            " ", ",", "%", "@", "?", "\u0000", "\uFEFF", "\u2028", "\uD83D\uDE9C", "![a](b)", "<b>", "](topic:", "**",
            "| - |", "0x1f", "1e999", "-1", "99999999999999999999", "NaN", "~", "null", "yes",
            "{count, plural, other {", "1/0 in", "  ");

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
                spoilt = mutate(spoilt, random);
            }
            tiny.write(file, spoilt);
            String what = "seed " + seed + ", reading " + i + ", " + file + ": ";
            try {
                Reading<Content> reading = assertTimeoutPreemptively(HANGS, tiny::read, what + "hangs");
                bad += reading instanceof Reading.Bad<Content> ? 1 : 0;
                assertTrue(!(reading instanceof Reading.Bad<Content> read) || !read.problems().isEmpty(), what);
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

    private static byte[] mutate(byte[] bytes, Random random) {
        int at = bytes.length == 0 ? 0 : random.nextInt(bytes.length);
        int length = Math.min(bytes.length - at, 1 + random.nextInt(12));
        return switch (random.nextInt(5)) {
            case 0 -> spliced(bytes, at, length, new byte[0]);
            case 1 -> spliced(bytes, at, 0, BITS.get(random.nextInt(BITS.size())).getBytes(StandardCharsets.UTF_8));
            case 2 -> spliced(bytes, at, 1, new byte[] {(byte) random.nextInt(256)});
            case 3 -> Arrays.copyOf(bytes, at);
            default -> spliced(bytes, random.nextInt(bytes.length + 1), 0, Arrays.copyOfRange(bytes, at, at + length));
        };
    }

    private static byte[] spliced(byte[] bytes, int at, int dropped, byte[] put) {
        var out = new ByteArrayOutputStream();
        out.write(bytes, 0, at);
        out.writeBytes(put);
        int rest = Math.min(bytes.length, at + dropped);
        out.write(bytes, rest, bytes.length - rest);
        return out.toByteArray();
    }
}
