package fencerow.search;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Titles and best sentences of hits, with the words that match marked. The texts are read once, when the finder is
 * built, so that a keystroke only looks stems up.
 */
final class Excerpts {
    private static final char PARAGRAPH_END = '\u2029';
    private static final int SHORTEST = 90;
    private static final int LONGEST = 260;

    private final List<Text> titles;
    private final List<Text> texts;

    Excerpts(List<Entry> entries, Reader reader) {
        titles = entries.stream().map(entry -> Text.of(entry.title(), entry.language(), reader)).toList();
        texts = entries.stream().map(entry -> Text.of(text(entry), entry.language(), reader)).toList();
    }

    /** All passages of an entry as one text. */
    static String text(Entry entry) {
        return entry.passages().stream()
                .map(passage -> passage.words().replace('\n', PARAGRAPH_END))
                .collect(Collectors.joining(String.valueOf(PARAGRAPH_END)));
    }

    /** Title, section and excerpt. */
    record Shown(Marked title, String section, Marked excerpt) {}

    /**
     * What to mark.
     *
     * @param stems  stems in any language, with what finding one is worth
     * @param starts beginnings of words still being typed
     */
    record Marks(Map<String, Double> stems, Set<String> starts) {
        double worth(String stem, String folded) {
            double worth = stems.getOrDefault(stem, 0.0);
            return worth > 0 || starts.stream().noneMatch(folded::startsWith) ? worth : 1;
        }
    }

    /** What to show of the entry at a place. */
    Shown of(int place, Entry entry, Marks marks) {
        Marked title = titles.get(place).marked(0, entry.title().length(), marks);
        Text text = texts.get(place);
        int best = text.bestSentence(marks);
        if (best < 0) {
            return new Shown(title, "", opening(entry));
        }
        int from = text.ends()[best] - text.length(best);
        int to = text.ends()[best];
        for (int next = best + 1; next < text.ends().length && to - from < SHORTEST; next++) {
            to = text.ends()[next];
        }
        return new Shown(title, section(entry, from), text.marked(from, to, marks));
    }

    private static String section(Entry entry, int from) {
        int end = 0;
        for (Passage passage : entry.passages()) {
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
                : Marked.plain(cut(entry.passages().get(0).words().replace('\n', ' ')));
    }

    private static String cut(String words) {
        if (words.length() <= LONGEST) {
            return words;
        }
        int blank = words.lastIndexOf(' ', LONGEST);
        return words.substring(0, blank > 0 ? blank : LONGEST).stripTrailing() + "\u2026";
    }

    /**
     * A text read.
     *
     * @param words  that have a stem
     * @param stems  of those words, in the text's language
     * @param ends   where its sentences end
     */
    private record Text(String text, List<Reading.Word> words, String[] stems, int[] ends) {
        static Text of(String text, String language, Reader reader) {
            List<Reading.Word> words = reader.words(text, language);
            String[] stems = words.stream().map(word -> word.stem(language).orElse("")).toArray(String[]::new);
            return new Text(text, words, stems, sentenceEnds(text));
        }

        private static int[] sentenceEnds(String text) {
            BreakIterator sentences = BreakIterator.getSentenceInstance(Locale.ROOT);
            sentences.setText(text);
            return IntStream.generate(sentences::next).takeWhile(end -> end != BreakIterator.DONE).toArray();
        }

        int length(int sentence) {
            return ends[sentence] - (sentence == 0 ? 0 : ends[sentence - 1]);
        }

        /** The sentence in which the most worth is found, or -1. */
        int bestSentence(Marks marks) {
            int best = -1;
            double most = 0;
            int sentence = 0;
            double worth = 0;
            List<String> found = new ArrayList<>();
            for (int i = 0; i < stems.length; i++) {
                while (words.get(i).from() >= ends[sentence]) {
                    sentence++;
                    worth = 0;
                    found.clear();
                }
                double one = marks.worth(stems[i], words.get(i).folded());
                if (one > 0 && !found.contains(stems[i])) {
                    found.add(stems[i]);
                    worth += one;
                    if (worth > most) {
                        most = worth;
                        best = sentence;
                    }
                }
            }
            return best;
        }

        Marked marked(int from, int to, Marks marks) {
            int start = from;
            while (start < to && Character.isWhitespace(text.charAt(start))) {
                start++;
            }
            String shown = cut(text.substring(start, to).replace(PARAGRAPH_END, ' ').stripTrailing());
            List<Marked.Span> spans = new ArrayList<>();
            for (int i = 0; i < stems.length; i++) {
                Reading.Word word = words.get(i);
                boolean within = word.from() >= start && word.to() <= start + shown.length();
                if (within && marks.worth(stems[i], word.folded()) > 0) {
                    spans.add(new Marked.Span(word.from() - start, word.to() - start));
                }
            }
            spans.sort(Comparator.comparingInt(Marked.Span::from));
            return new Marked(shown, spans);
        }
    }
}
