package fencerow.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.uhighlight.LengthGoalBreakIterator;
import org.apache.lucene.search.uhighlight.Passage;
import org.apache.lucene.search.uhighlight.PassageFormatter;
import org.apache.lucene.search.uhighlight.UnifiedHighlighter;
import org.apache.lucene.search.uhighlight.WholeBreakIterator;

/** Titles and best passages of hits, with the words that match marked. */
final class Excerpts {
    /** Ends a passage and a block, also for the sentence finder. */
    private static final char PARAGRAPH_END = '\u2029';
    private static final int SHORTEST = 90;
    private static final int LONGEST = 260;

    private final Index index;

    Excerpts(Index index) {
        this.index = index;
    }

    /** All passages of an entry as one text, as it is indexed. */
    static String text(Entry entry) {
        return entry.passages().stream()
                .map(passage -> passage.words().replace('\n', PARAGRAPH_END))
                .collect(Collectors.joining(String.valueOf(PARAGRAPH_END)));
    }

    /** Title, section and excerpt. */
    record Shown(Marked title, String section, Marked excerpt) {}

    /**
     * What to show of the entries at these places.
     *
     * @param marking finds the words to mark, in any title or text field
     */
    List<Shown> of(List<Integer> places, Query marking) {
        Map<String, List<Integer>> byLanguage = places.stream()
                .collect(Collectors.groupingBy(place -> index.entries().get(place).language()));
        Map<Integer, Shown> shown = new HashMap<>();
        byLanguage.forEach((language, some) -> shown.putAll(mark(language, some, marking)));
        return places.stream().map(shown::get).toList();
    }

    private Map<Integer, Shown> mark(String language, List<Integer> places, Query marking) {
        String titleField = Index.TITLE + language;
        String textField = Index.TEXT + language;
        String[] fields = {textField, titleField};
        int[] documents = places.stream().mapToInt(Integer::intValue).toArray();
        Map<Integer, Shown> shown = new HashMap<>();
        try {
            Map<String, Object[]> found = new Marker(index, language)
                    .mark(fields, marking, documents, new int[] {1, 1});
            // The library sorts documents within, and gives results in the order asked for.
            Object[] titles = found.getOrDefault(titleField, new Object[0]);
            Object[] texts = found.getOrDefault(textField, new Object[0]);
            for (int i = 0; i < documents.length; i++) {
                Entry entry = index.entries().get(documents[i]);
                Marked title = titles[i] instanceof Stretch stretch
                        ? stretch.marked()
                        : Marked.plain(entry.title());
                shown.put(documents[i], texts[i] instanceof Stretch stretch
                        ? new Shown(title, section(entry, stretch.from()), stretch.marked())
                        : new Shown(title, "", opening(entry)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the index in memory could not be read", e);
        }
        return shown;
    }

    private static String section(Entry entry, int from) {
        int end = 0;
        for (var passage : entry.passages()) {
            end += passage.words().length() + 1;
            if (from < end) {
                return passage.heading();
            }
        }
        return "";
    }

    /** How the entry begins, where none of its text matches. */
    private static Marked opening(Entry entry) {
        return entry.passages().isEmpty()
                ? Marked.plain("")
                : Marked.plain(cut(entry.passages().get(0).words().replace('\n', ' '), LONGEST));
    }

    private static String cut(String words, int longest) {
        if (words.length() <= longest) {
            return words;
        }
        int blank = words.lastIndexOf(' ', longest);
        return words.substring(0, blank > 0 ? blank : longest).stripTrailing() + "\u2026";
    }

    /** A stretch of a text, where it begins there, and its marks. */
    private record Stretch(int from, Marked marked) {}

    private static final class Marker extends UnifiedHighlighter {
        private final Index index;
        private final String textField;

        Marker(Index index, String language) {
            super(new UnifiedHighlighter.Builder(index.searcher(), Analysis.surface())
                    .withFieldMatcher(field -> true)
                    .withHighlightPhrasesStrictly(false)
                    .withMaxNoHighlightPassages(0)
                    .withFormatter(new Stretches()));
            this.index = index;
            this.textField = Index.TEXT + language;
        }

        Map<String, Object[]> mark(String[] fields, Query marking, int[] documents, int[] most) throws IOException {
            return highlightFieldsAsObjects(fields, marking, documents, most);
        }

        @Override
        protected BreakIterator getBreakIterator(String field) {
            return field.equals(textField)
                    ? LengthGoalBreakIterator.createMinLength(
                            BreakIterator.getSentenceInstance(Locale.ROOT), SHORTEST, 0.5f)
                    : new WholeBreakIterator();
        }

        /** The texts come from the entries; the index keeps none. */
        @Override
        protected List<CharSequence[]> loadFieldValues(
                String[] fields, org.apache.lucene.search.DocIdSetIterator documents, int longest)
                throws IOException {
            List<CharSequence[]> values = new ArrayList<>();
            for (int doc = documents.nextDoc();
                    doc != org.apache.lucene.search.DocIdSetIterator.NO_MORE_DOCS;
                    doc = documents.nextDoc()) {
                Entry entry = index.entries().get(doc);
                values.add(Arrays.stream(fields)
                        .map(field -> field.equals(textField) ? text(entry) : entry.title())
                        .toArray(CharSequence[]::new));
            }
            return values;
        }
    }

    /** Gives the best passage as a stretch instead of a string. */
    private static final class Stretches extends PassageFormatter {
        @Override
        public Object format(Passage[] passages, String content) {
            Passage passage = passages[0];
            int from = passage.getStartOffset();
            int to = passage.getEndOffset();
            while (from < to && Character.isWhitespace(content.charAt(from))) {
                from++;
            }
            String words = cut(content.substring(from, to).replace(PARAGRAPH_END, ' ').stripTrailing(), LONGEST);
            List<Marked.Span> spans = new ArrayList<>();
            for (int i = 0; i < passage.getNumMatches(); i++) {
                int start = passage.getMatchStarts()[i] - from;
                int end = passage.getMatchEnds()[i] - from;
                int last = spans.isEmpty() ? 0 : spans.get(spans.size() - 1).to();
                if (start >= last && end <= words.length()) {
                    spans.add(new Marked.Span(start, end));
                }
            }
            return new Stretch(from, new Marked(words, spans));
        }
    }
}
