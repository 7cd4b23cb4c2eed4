package fencerow.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.AutomatonQuery;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.FuzzyQuery;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.automaton.Automata;
import org.apache.lucene.util.automaton.LevenshteinAutomata;
import org.apache.lucene.util.automaton.Operations;

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
    private static final float WHOLE = 20;
    private static final float TOGETHER = 1;
    private static final float PUT_RIGHT = 0.8f;
    private static final float SYNONYM = 1.3f;
    private static final float LOOSE_SYNONYM = 0.7f;
    /** What a misspelt word counts, unknown as written or known. */
    private static final float MISSPELT = 3;
    private static final float PERHAPS_MISSPELT = 0.6f;
    /** The part that a word's lesser matches add to its best one. */
    private static final float TIE = 0.15f;
    private static final int SLOP = 3;
    private static final int SHORTEST_FUZZY = 4;
    private static final int SHORTEST_FUZZY_TWICE = 6;
    private static final int SHORTEST_BODY_START = 3;
    private static final int MOST_FUZZY = 30;

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
            ways.add(words(longest.words(), reading));
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
        all.add(words(left, reading), Occur.SHOULD);
        for (String joined : reading.joined()) {
            all.add(boost(anyOf(List.of(
                    term(Index.CALLED, joined, JOINED), term(Index.SHOWN, joined, TEXT))), 1), Occur.SHOULD);
        }
        for (String each : index.languages()) {
            List<String> stems = reading.stems(each);
            all.add(new BoostQuery(new ConstantScoreQuery(
                    new TermQuery(new Term(Index.WHOLE, String.join(" ", stems)))), WHOLE), Occur.SHOULD);
            if (stems.size() > 1) {
                all.add(boost(anyOf(List.of(
                        boost(phrase(Index.TITLE + each, stems), TITLE),
                        boost(phrase(Index.NAMES + each, stems), NAMES),
                        boost(phrase(Index.TEXT + each, stems), TEXT))), TOGETHER), Occur.SHOULD);
            }
        }
        return all.build();
    }

    private Query words(List<Reading.Word> words, Reading reading) {
        var all = new BooleanQuery.Builder();
        words.forEach(word -> all.add(word(word, reading), Occur.SHOULD));
        return all.build();
    }

    private Query word(Reading.Word word, Reading reading) {
        List<Query> ways = new ArrayList<>();
        String folded = word.folded();
        for (String language : index.languages()) {
            word.stem(language).ifPresent(stem -> {
                ways.add(term(Index.TITLE + language, stem, word.measure() ? MEASURE : TITLE));
                ways.add(term(Index.NAMES + language, stem, NAMES));
                ways.add(term(Index.RELATED + language, stem, RELATED));
                ways.add(term(Index.LEAD + language, stem, LEAD));
                ways.add(term(Index.TEXT + language, stem, TEXT));
            });
        }
        ways.add(term(Index.JOINED, folded, JOINED));
        if (word.measure()) {
            String number = folded.replaceAll("[a-z]+$", "");
            ways.add(term(Index.CALLED, number, NUMBER));
            ways.add(term(Index.SHOWN, number, NUMBER / 4));
        }
        boolean unfinished = reading.isUnfinished(word);
        if (unfinished) {
            ways.add(term(Index.STARTS, folded, START));
            if (folded.length() >= SHORTEST_BODY_START) {
                ways.add(boost(new PrefixQuery(new Term(Index.SHOWN, folded)), BODY_START));
            }
        }
        if (folded.length() >= SHORTEST_FUZZY && !word.isNumber()) {
            boolean known = isKnown(word) || unfinished && index.count(Index.STARTS, folded) > 0;
            float weight = known ? PERHAPS_MISSPELT : MISSPELT;
            int edits = known || folded.length() < SHORTEST_FUZZY_TWICE ? 1 : 2;
            ways.add(boost(fuzzy(Index.CALLED, folded, edits), weight));
            ways.add(boost(fuzzy(Index.SHOWN, folded, edits), weight / 4));
            if (unfinished && !known) {
                ways.add(boost(misspeltStart(folded), 1));
            }
        }
        return anyOf(ways);
    }

    /** Whether the word, or another form of it, is anywhere in the index. */
    boolean isKnown(Reading.Word word) {
        return index.count(Index.CALLED, word.folded()) > 0
                || index.count(Index.SHOWN, word.folded()) > 0
                || index.languages().stream().anyMatch(language -> word.stem(language)
                        .filter(stem -> index.count(Index.NAMES + language, stem) > 0
                                || index.count(Index.TITLE + language, stem) > 0
                                || index.count(Index.TEXT + language, stem) > 0)
                        .isPresent());
    }

    private static Query misspeltStart(String start) {
        var edited = new LevenshteinAutomata(start, true).toAutomaton(1, "");
        var any = Operations.concatenate(edited, Automata.makeAnyString());
        return new AutomatonQuery(new Term(Index.CALLED, start),
                Operations.determinize(any, Operations.DEFAULT_DETERMINIZE_WORK_LIMIT));
    }

    private Query meaning(Concepts.Meant meant) {
        List<Query> ways = new ArrayList<>();
        for (Map<String, List<String>> phrase : meant.phrases()) {
            phrase.forEach((language, stems) -> {
                ways.add(boost(phrase(Index.TITLE + language, stems), TITLE));
                ways.add(boost(phrase(Index.NAMES + language, stems), NAMES));
                ways.add(boost(phrase(Index.LEAD + language, stems), LEAD));
                ways.add(boost(phrase(Index.TEXT + language, stems), TEXT));
            });
        }
        return boost(anyOf(ways), meant.words().size() > 1 ? SYNONYM : LOOSE_SYNONYM);
    }

    /** Entries whose title or a name has words that begin like all those typed. */
    Query beginnings(Reading reading) {
        var all = new BooleanQuery.Builder();
        for (Reading.Word word : reading.words()) {
            all.add(new TermQuery(new Term(Index.STARTS, word.folded())), Occur.MUST);
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

    /** The words to mark in what is shown: those of the query, put right, and what they also stand for. */
    Query marking(Reading reading, Optional<Reading> putRight) {
        var any = new BooleanQuery.Builder();
        List<Reading.Word> words = new ArrayList<>(reading.words());
        putRight.ifPresent(right -> words.addAll(right.words()));
        for (String language : index.languages()) {
            String field = Index.TEXT + language;
            for (Reading.Word word : words) {
                word.stem(language).ifPresent(stem -> any.add(new TermQuery(new Term(field, stem)), Occur.SHOULD));
                if (reading.isUnfinished(word) && word.stem(language).isPresent()) {
                    any.add(new PrefixQuery(new Term(field, word.folded())), Occur.SHOULD);
                }
            }
            concepts.in(reading).stream()
                    .flatMap(meant -> meant.phrases().stream())
                    .flatMap(phrase -> phrase.getOrDefault(language, List.of()).stream())
                    .distinct()
                    .forEach(stem -> any.add(new TermQuery(new Term(field, stem)), Occur.SHOULD));
        }
        return any.build();
    }

    private static Query anyOf(Collection<Query> ways) {
        return new DisjunctionMaxQuery(ways, TIE);
    }

    private static Query boost(Query query, float boost) {
        return new BoostQuery(query, boost);
    }

    private static Query term(String field, String word, float boost) {
        return new BoostQuery(new TermQuery(new Term(field, word)), boost);
    }

    private static Query fuzzy(String field, String word, int edits) {
        return new FuzzyQuery(new Term(field, word), edits, 0, MOST_FUZZY, true);
    }

    private static Query phrase(String field, List<String> stems) {
        if (stems.size() == 1) {
            return new TermQuery(new Term(field, stems.get(0)));
        }
        var phrase = new PhraseQuery.Builder().setSlop(SLOP);
        stems.forEach(stem -> phrase.add(new Term(field, stem)));
        return phrase.build();
    }
}
