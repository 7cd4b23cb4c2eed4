package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class VocabularyTest {
    /** Optimal string alignment, in which no part is edited twice: true Damerau distance would give ca to abc 2. */
    @Test
    void distanceIsThatOfTheUsualExamples() {
        assertEquals(1, Vocabulary.distance("teh", "the"));
        assertEquals(1, Vocabulary.distance("recieve", "receive"));
        assertEquals(3, Vocabulary.distance("kitten", "sitting"));
        assertEquals(3, Vocabulary.distance("ca", "abc"));
        assertEquals(0, Vocabulary.distance("", ""));
        assertEquals(5, Vocabulary.distance("", "hoist"));
    }

    @Test
    void wordsNearAreThoseWithFewEditsNearestFirst() {
        var index = Index.of(List.of(named("loader"), named("load"), named("leader"), named("boulder")));

        assertEquals(List.of("loader"), near(index.vocabulary().near("laoder", 1)));
        assertEquals(List.of("loader", "leader"), near(index.vocabulary().near("laoder", 2)));
        assertEquals(List.of("leader"), near(index.vocabulary().near("loader", 1)));
        assertEquals(List.of(), near(index.vocabulary().near("tiller", 2)));
    }

    @Test
    void wordsStartingNearAreThoseThatMayYetBeTyped() {
        var index = Index.of(List.of(named("hydraulics"), named("hydrostat"), named("grapple")));

        assertEquals(List.of("hydraulics"), near(index.vocabulary().startingNear("hydarul")));
    }

    private static List<String> near(List<Vocabulary.Near> near) {
        return near.stream().map(each -> each.known().word()).toList();
    }

    private static Entry named(String title) {
        return new Entry(Kind.WORD, title, "en", title, List.of(), List.of(), List.of(), Set.of(),
                Optional.empty(), 1);
    }
}
