package fencerow.search;

import java.util.List;
import java.util.Optional;

/** Puts words right that are known nowhere. */
final class Spelling {
    /** Shortest word that is taken for a misspelt one. */
    static final int SHORTEST = 4;

    private static final int SHORTEST_FOR_TWO_EDITS = 5;

    private final Index index;

    Spelling(Index index) {
        this.index = index;
    }

    /**
     * A text put right.
     *
     * @param text  the text with the likeliest words in place of unknown ones
     * @param shown whether all those words may be shown
     */
    record Right(String text, boolean shown) {}

    /** How many edits away a word of the length may be from what was meant. */
    static int edits(String word) {
        return word.length() < SHORTEST_FOR_TWO_EDITS ? 1 : 2;
    }

    /** The text with unknown words put right, if there are any and all of them can be. */
    Optional<Right> putRight(String text, Reading reading, String language) {
        var right = new StringBuilder();
        boolean shown = true;
        int done = 0;
        for (Reading.Word word : reading.words()) {
            boolean begun = reading.isUnfinished(word) && index.hasStart(word.folded());
            boolean aWord = !word.isNumber() && word.folded().length() >= SHORTEST;
            if (aWord && !begun && !index.isKnown(word, language)) {
                Optional<Vocabulary.Known> likely = likely(word.folded());
                if (likely.isEmpty()) {
                    return Optional.empty();
                }
                shown &= likely.get().shown() > 0;
                right.append(text, done, word.from()).append(likely.get().word());
                done = word.to();
            }
        }
        return done == 0
                ? Optional.empty()
                : Optional.of(new Right(right.append(text.substring(done)).toString(), shown));
    }

    /** The commonest of the nearest words, one that may be shown if there is one. */
    private Optional<Vocabulary.Known> likely(String word) {
        List<Vocabulary.Known> nearest = index.vocabulary().near(word, edits(word)).stream()
                .map(Vocabulary.Near::known)
                .toList();
        return nearest.stream().filter(known -> known.shown() > 0).findFirst().or(() -> nearest.stream().findFirst());
    }
}
