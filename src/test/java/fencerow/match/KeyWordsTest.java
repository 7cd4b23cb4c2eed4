package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words that stand for outcomes in documents and text keys. */
class KeyWordsTest {
    private static void assertNamesApart(Stream<String> words) {
        List<String> all = words.toList();
        all.forEach(word -> assertTrue(word.matches("[a-z]+(-[a-z]+)*"), "[" + word + "] is not spelt as a key"));
        assertEquals(all.size(), new HashSet<>(all).size(), all.toString());
    }

    @Test
    void eachOutcomeHasAWordOfItsOwnThatIsSpeltAsAKey() {
        assertNamesApart(Stream.of(Verdict.values()).map(Verdict::id));
        assertNamesApart(Stream.of(Blocked.Rule.values()).map(Blocked.Rule::id));
        assertNamesApart(Stream.of(Difference.Kind.values()).map(Difference.Kind::id));
    }
}
