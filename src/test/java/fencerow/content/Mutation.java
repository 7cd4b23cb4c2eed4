package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Spoils texts at random, and knows what a clear complaint about one looks like. */
final class Mutation {
    private static final List<String> BITS = List.of(
            ":", "- ", "[", "]", "{", "}", "\"", "'", "#", "&a ", "*a ", "!t ", "|", ">", "---\n", "...\n", "\n", "\t",
            " ", ",", "%", "@", "?", "\u0000", "\uFEFF", "\u2028", "\uD83D\uDE9C", "![a](b)", "<b>", "](topic:", "**",
            "| - |", "0x1f", "1e999", "-1", "99999999999999999999", "NaN", "~", "null", "yes",
            "{count, plural, other {", "1/0 in", "  ");

    private Mutation() {}

    /** The bytes with one thing cut, put in, changed, cut off or doubled. */
    static byte[] of(byte[] bytes, Random random) {
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

    /** Each problem has a file, a line, what is wrong and what to do, and no word of the program's own. */
    static void assertClear(List<Problem> problems, String what) {
        assertFalse(problems.isEmpty(), what + "refused without a reason");
        for (Problem problem : problems) {
            String text = problem.toString();
            assertFalse(problem.place().file().isBlank() || problem.what().isBlank() || problem.whatToDo().isBlank(),
                    what + "[" + text + "] lacks a part");
            assertTrue(problem.place().line() >= 1, what + text);
            assertFalse(text.contains("Exception") || text.contains("java.") || text.contains("null;"), what + text);
        }
    }
}
