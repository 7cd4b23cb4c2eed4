package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Queries of no sense at all: each is answered, and no answer is longer than asked for. */
class RandomQueriesTest {
    private static final int QUERIES = 5 * Integer.getInteger("fencerow.fuzz", 40);
    private static final long SEED = 20_261_125;
    private static final Duration HANGS = Duration.ofMinutes(1);
    private static final List<String> BITS = List.of("quick attach", "under", "$", "hp", "20", "1e99", "\"", "*", "?",
            "~", "(", ")", "[", "AND", "OR", "NOT", "-", "+", "/", "\\", ":", "^", "\u00f1", "\uD83D\uDE9C", "\uD83D",
            "\u0000", "\u202E", "\t", "\n", " ", "  ", "'", "cab < 9 ft", "less than", "between 10 and", "00000",
            "\u0301", "a", "tractor", "cuchar\u00f3n", "{", "%s", "9999999999999999999999");

    @Test
    void everyQueryIsAnswered() {
        var random = new Random(SEED);
        for (int i = 0; i < QUERIES; i++) {
            var text = new StringBuilder();
            for (int bits = random.nextInt(12); bits >= 0; bits--) {
                text.append(random.nextInt(3) > 0
                        ? BITS.get(random.nextInt(BITS.size()))
                        : Character.toString(random.nextInt(Character.MAX_CODE_POINT)));
            }
            String what = "seed " + SEED + ", query " + i + " [" + text + "]";
            Query query = Query.of(text.toString(), random.nextBoolean() ? "en" : "es").withLimit(7);
            try {
                Results results =
                        assertTimeoutPreemptively(HANGS, () -> Shelf.finder().find(query), what + " hangs");
                assertTrue(results.hits().size() <= 7, what);
            } catch (RuntimeException | StackOverflowError e) {
                fail(what, e);
            }
        }
    }

    @Test
    void muchOfTheSameIsAnsweredToo() {
        for (String bit : BITS) {
            String much = bit.repeat(50_000);
            assertTimeoutPreemptively(HANGS, () -> Shelf.finder().find(Query.of(much, "en")), bit + " hangs");
        }
    }
}
