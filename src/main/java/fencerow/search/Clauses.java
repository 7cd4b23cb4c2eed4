package fencerow.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BlendedTermQuery;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** Turns a reading into the library's queries. */
final class Clauses {
    private static final float TITLE = 5;
    private static final float NAMES = 4;
    private static final float RELATED = 2;
    private static final float LEAD = 2;
    private static final float TEXT = 1;
    private static final float START = 2.5f;
    private static final float BODY_START = 0.5f;
    private static final float JOINED = 4;
    private static final float NUMBER = 2;
    /** A number with a unit in a title says which of many it is. */
    private static final float MEASURE = 15;
    /** What a name, and the title, count that are just what is looked for. */
    private static final float WHOLE = 20;
    private static final float WHOLE_TITLE = 20;
    private static final float PUT_RIGHT = 0.8f;
    private static final float SYNONYM = 1.3f;
    private static final float LOOSE_SYNONYM = 0.7f;
    /** What a misspelt word counts, unknown as written or known. */
    private static final float MISSPELT = 3;
    private static final float PERHAPS_MISSPELT = 0.6f;
    /** The part that a word's lesser matches add to its best one. */
    private static final float TIE = 0.15f;
    /** What marking a synonym is worth where a word of the query is worth 1. */
    private static final double MARKED_SYNONYM = 0.5;
    private static final int SLOP = 3;
    private static final int SHORTEST_BODY_START = 3;

    private final Index index;
    private final Concepts concepts;

    Clauses(Index index, Concepts concepts) {
        this.index = index;
        this.concepts = concepts;
    }

    /** Everything that has to do with the words, or with what they were probably meant to be, scored by how much. */
    Query of(Reading reading, Optional<Reading> putRight, String language) {
        Query asTyped = of(reading, language);
        return putRight
                .map(right -> anyOf(List.of(asTyped, boost(of(right, language), PUT_RIGHT))))
                .orElse(asTyped);
    }

    private Query of(Reading reading, String language) {
        var all = new BooleanQuery.Builder();
        List<Reading.Word> left = new ArrayList<>(reading.telling(language));
        List<Concepts.Meant> meanings = new ArrayList<>(concepts.in(reading));
        while (!meanings.isEmpty()) {
            Concepts.Meant longest = meanings.remove(0);
            List<Query> ways = new ArrayList<>();
            ways.add(words(longest.words(), reading, language));
            ways.add(meaning(longest));
            meanings.removeIf(other -> {
                if (longest.words().containsAll(other.words())) {
                    ways.add(meaning(other));
                }
                return other.words().stream().anyMatch(longest.words()::contains);
            });
            left.removeAll(longest.words());
            all.add(anyOf(ways), Occur.SHOULD);
        }
        all.add(words(left, reading, language), Occur.SHOULD);
        for (String joined : reading.joined()) {
            List<Query> ways = new ArrayList<>();
            add(ways, Index.CALLED, joined, JOINED);
            add(ways, Index.SHOWN, joined, TEXT);
            all.add(anyOf(ways), Occur.SHOULD);
        }
        for (String each : index.languages()) {
            List<String> stems = reading.stems(each);
            String whole = String.join(" ", stems);
            all.add(exactly(Index.WHOLE, whole, WHOLE), Occur.SHOULD);
            all.add(exactly(Index.WHOLE_TITLE, whole, WHOLE_TITLE), Occur.SHOULD);
            if (stems.size() > 1) {
                List<Query> ways = new ArrayList<>();
                add(ways, Index.TITLE + each, stems, TITLE);
                add(ways, Index.NAMES + each, stems, NAMES);
                add(ways, Index.TEXT + each, stems, TEXT);
                all.add(anyOf(ways), Occur.SHOULD);
            }
        }
        return all.build();
    }

    private Query words(List<Reading.Word> words, Reading reading, String language) {
        var all = new BooleanQuery.Builder();
        words.forEach(word -> all.add(word(word, reading, language), Occur.SHOULD));
        return all.build();
    }

    private Query word(Reading.Word word, Reading reading, String session) {
        List<Query> ways = new ArrayList<>();
        String folded = word.folded();
        for (String language : index.languages()) {
            word.stem(language).ifPresent(stem -> {
                add(ways, Index.NAMES + language, stem, NAMES);
                add(ways, Index.RELATED + language, stem, RELATED);
            });
        }
        for (String language : index.entryLanguages()) {
            word.stem(language).ifPresent(stem -> {
                add(ways, Index.TITLE + language, stem, word.measure() ? MEASURE : TITLE);
                add(ways, Index.LEAD + language, stem, LEAD);
                add(ways, Index.TEXT + language, stem, TEXT);
            });
        }
        add(ways, Index.JOINED, folded, JOINED);
        if (folded.endsWith("s")) {
            add(ways, Index.JOINED, folded.substring(0, folded.length() - 1), JOINED);
        }
        if (word.measure()) {
            String number = folded.replaceAll("[a-z]+$", "");
            add(ways, Index.CALLED, number, NUMBER);
            add(ways, Index.SHOWN, number, NUMBER / 4);
        }
        boolean unfinished = reading.isUnfinished(word);
        if (unfinished) {
            add(ways, Index.STARTS, folded, START);
            if (folded.length() >= SHORTEST_BODY_START) {
                ways.add(boost(new PrefixQuery(new Term(Index.SHOWN, folded)), BODY_START));
            }
        }
        if (folded.length() >= Spelling.SHORTEST && !word.isNumber()) {
            addMisspelt(ways, folded, index.isKnown(word, session), unfinished);
        }
        return anyOf(ways);
    }

    private void addMisspelt(List<Query> ways, String word, boolean known, boolean unfinished) {
        boolean begun = unfinished && index.hasStart(word);
        float weight = known || begun ? PERHAPS_MISSPELT : MISSPELT;
        int edits = known || begun ? 1 : Spelling.edits(word);
        addNear(ways, index.vocabulary().near(word, edits), word.length(), weight);
        if (unfinished && !known && !begun) {
            addNear(ways, index.vocabulary().startingNear(word), word.length(), 1);
        }
    }

    /** Near words count as if all were equally rare, or the rarest mistake would win. */
    private static void addNear(List<Query> ways, List<Vocabulary.Near> near, int length, float weight) {
        if (near.isEmpty()) {
            return;
        }
        var called = new BlendedTermQuery.Builder();
        var shown = new BlendedTermQuery.Builder();
        for (Vocabulary.Near each : near) {
            float likeness = 1 - (float) each.edits() / Math.max(length, each.edits() + 1);
            called.add(new Term(Index.CALLED, each.known().word()), likeness);
            shown.add(new Term(Index.SHOWN, each.known().word()), likeness);
        }
        ways.add(boost(called.build(), weight));
        ways.add(boost(shown.build(), weight / 4));
    }

    private Query meaning(Concepts.Meant meant) {
        List<Query> ways = new ArrayList<>();
        for (Map<String, List<String>> phrase : meant.phrases()) {
            phrase.forEach((language, stems) -> {
                add(ways, language.equals(Concepts.AS_WRITTEN) ? Index.CALLED : Index.NAMES + language, stems, NAMES);
                if (index.entryLanguages().contains(language)) {
                    add(ways, Index.TITLE + language, stems, TITLE);
                    add(ways, Index.LEAD + language, stems, LEAD);
                    add(ways, Index.TEXT + language, stems, TEXT);
                }
            });
        }
        return boost(anyOf(ways), meant.words().size() > 1 ? SYNONYM : LOOSE_SYNONYM);
    }

    /** Entries whose title or names have all the words typed, the last one perhaps unfinished. */
    Query beginnings(Reading reading) {
        var all = new BooleanQuery.Builder();
        for (Reading.Word word : reading.words()) {
            String field = reading.isUnfinished(word) ? Index.STARTS : Index.CALLED;
            all.add(new TermQuery(new Term(field, word.folded())), Occur.MUST);
        }
        return new ConstantScoreQuery(all.build());
    }

    /** Entries that share groups of letters with the text. */
    Query nearest(Reading reading) {
        var any = new BooleanQuery.Builder();
        any.add(new BoostQuery(new ConstantScoreQuery(new MatchAllDocsQuery()), 0.01f), Occur.SHOULD);
        for (Reading.Word word : reading.words()) {
            for (int i = 0; i + Analysis.GRAM <= word.folded().length(); i++) {
                String gram = word.folded().substring(i, i + Analysis.GRAM);
                any.add(new TermQuery(new Term(Index.GRAMS, gram)), Occur.SHOULD);
            }
        }
        return any.build();
    }

    /** What to mark in what is shown: words of the query, put right, and what they also stand for. */
    Excerpts.Marks marks(Reading reading, Optional<Reading> putRight) {
        Map<String, Double> stems = new HashMap<>();
        Set<String> starts = new HashSet<>();
        Stream.concat(Stream.of(reading), putRight.stream()).forEach(each -> {
            concepts.in(each).stream()
                    .flatMap(meant -> meant.phrases().stream())
                    .flatMap(phrase -> phrase.values().stream())
                    .flatMap(List::stream)
                    .forEach(stem -> stems.put(stem, MARKED_SYNONYM));
            each.words().forEach(word -> word.stems().values().forEach(stem -> stems.put(stem, 1.0)));
            each.words().stream().filter(each::isUnfinished).map(Reading.Word::folded).forEach(starts::add);
        });
        return new Excerpts.Marks(stems, starts);
    }

    private static Query exactly(String field, String whole, float boost) {
        return boost(new ConstantScoreQuery(new TermQuery(new Term(field, whole))), boost);
    }

    private static Query anyOf(Collection<Query> ways) {
        return new DisjunctionMaxQuery(ways, TIE);
    }

    private static Query boost(Query query, float boost) {
        return new BoostQuery(query, boost);
    }

    private void add(List<Query> ways, String field, String word, float boost) {
        var term = new Term(field, word);
        index.states(term).ifPresent(states -> ways.add(boost(new TermQuery(term, states), boost)));
    }

    /** Adds a phrase whose words are all there. */
    private void add(List<Query> ways, String field, List<String> stems, float boost) {
        if (stems.size() == 1) {
            add(ways, field, stems.get(0), boost);
        } else if (stems.stream().allMatch(stem -> index.states(new Term(field, stem)).isPresent())) {
            var phrase = new PhraseQuery.Builder().setSlop(SLOP);
            stems.forEach(stem -> phrase.add(new Term(field, stem)));
            ways.add(boost(phrase.build(), boost));
        }
    }
}
