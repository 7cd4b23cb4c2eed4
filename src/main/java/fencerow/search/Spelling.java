package fencerow.search;

import java.io.IOException;
import java.io.UncheckedIOException;
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

    /**
     * A text put right.
     *
     * @param text  the text with the likeliest words in place of unknown ones
     * @param shown whether all those words may be shown
     */
    record Right(String text, boolean shown) {}

    /** The text with unknown words put right, if there are any and all of them can be. */
    Optional<Right> putRight(String text, Reading reading) {
        var right = new StringBuilder();
        boolean shown = true;
        int done = 0;
        for (Reading.Word word : reading.words()) {
            boolean begun = reading.isUnfinished(word) && index.count(Index.STARTS, word.folded()) > 0;
            if (!begun && !word.isNumber() && word.folded().length() >= SHORTEST && !clauses.isKnown(word)) {
                Optional<String> toShow = likely(Index.SHOWN, word.folded());
                Optional<String> likely = toShow.or(() -> likely(Index.CALLED, word.folded()));
                if (likely.isEmpty()) {
                    return Optional.empty();
                }
                shown &= toShow.isPresent();
                right.append(text, done, word.from()).append(likely.get());
                done = word.to();
            }
        }
        return done == 0
                ? Optional.empty()
                : Optional.of(new Right(right.append(text.substring(done)).toString(), shown));
    }

    private Optional<String> likely(String field, String word) {
        try {
            SuggestWord[] found = checker.suggestSimilar(
                    new Term(field, word), 1, index.searcher().getIndexReader(), SuggestMode.SUGGEST_ALWAYS);
            return found.length == 0 ? Optional.empty() : Optional.of(found[0].string);
        } catch (IOException e) {
            throw new UncheckedIOException("the index in memory could not be read", e);
        }
    }
}
