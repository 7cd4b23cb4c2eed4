package fencerow.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.spell.DirectSpellChecker;
import org.apache.lucene.search.spell.SuggestMode;
import org.apache.lucene.search.spell.SuggestWord;

/** Puts words right that are known nowhere, with words that may be shown. */
final class Spelling {
    private static final float LEAST_LIKE = 0.6f;
    private static final int SHORTEST = 4;

    private final Index index;
    private final Clauses clauses;
    private final DirectSpellChecker checker = new DirectSpellChecker();

    Spelling(Index index, Clauses clauses) {
        this.index = index;
        this.clauses = clauses;
        checker.setMinPrefix(0);
        checker.setMinQueryLength(SHORTEST);
        checker.setAccuracy(LEAST_LIKE);
    }

    /** The text with unknown words put right, if there are any and all of them can be. */
    Optional<String> putRight(String text, Reading reading) {
        var right = new StringBuilder();
        List<Reading.Word> wrong = new ArrayList<>();
        int done = 0;
        for (Reading.Word word : reading.words()) {
            boolean begun = reading.isUnfinished(word) && index.count(Index.STARTS, word.folded()) > 0;
            if (!begun && !word.isNumber() && word.folded().length() >= SHORTEST && !clauses.isKnown(word)) {
                Optional<String> likely = likely(word.folded());
                if (likely.isEmpty()) {
                    return Optional.empty();
                }
                right.append(text, done, word.from()).append(likely.get());
                done = word.to();
                wrong.add(word);
            }
        }
        return wrong.isEmpty() ? Optional.empty() : Optional.of(right.append(text.substring(done)).toString());
    }

    private Optional<String> likely(String word) {
        try {
            SuggestWord[] found = checker.suggestSimilar(
                    new Term(Index.SHOWN, word), 1, index.searcher().getIndexReader(), SuggestMode.SUGGEST_ALWAYS);
            return found.length == 0 ? Optional.empty() : Optional.of(found[0].string);
        } catch (IOException e) {
            throw new UncheckedIOException("the index in memory could not be read", e);
        }
    }
}
