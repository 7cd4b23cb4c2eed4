package fencerow.search;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.lucene.analysis.Analyzer;

/**
 * Titles and best sentences of hits, with the words that match marked. The texts are read once, when the finder is
 * built, so that a keystroke only looks stems up.
 */
final class Excerpts {
    private static final char PARAGRAPH_END = '\u2029';
    private static final int SHORTEST = 90;
    private static final int LONGEST = 260;

    private final List<Text> titles = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();

    Excerpts(List<Entry> entries) {
        Map<String, Skimmer> skimmers = new HashMap<>();
        for (Entry entry : entries) {
            Skimmer skimmer = skimmers.computeIfAbsent(entry.language(), Skimmer::new);
            titles.add(skimmer.read(entry.title()));
            texts.add(skimmer.read(text(entry)));
        }
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
            if (stem.isEmpty()) {
                return 0;
            }
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

    /** Reads the texts of one language; the same word is kept once, for there are many of each. */
    private static final class Skimmer {
        private static final String SAYS_NOTHING = "";

        private final String language;
        private final UnaryOperator<String> stemmer;
        private final Analyzer surface = Analysis.surface();
        private final Map<String, String> folded = new HashMap<>();
        private final Map<String, String> stems = new HashMap<>();

        Skimmer(String language) {
            this.language = language;
            this.stemmer = Analysis.stemmer(language);
        }

        Text read(String text) {
            List<Analysis.Token> tokens = Analysis.tokens(surface, text);
            List<String> words = tokens.stream()
                    .map(token -> folded.computeIfAbsent(token.word(), same -> same))
                    .toList();
            return new Text(text, words.toArray(String[]::new), words.stream().map(this::stem).toArray(String[]::new),
                    tokens.stream().mapToInt(Analysis.Token::from).toArray(),
                    tokens.stream().mapToInt(Analysis.Token::to).toArray(), Text.sentenceEnds(text));
        }

        private String stem(String word) {
            return stems.computeIfAbsent(
                    word, any -> Analysis.isStop(language, any) ? SAYS_NOTHING : stemmer.apply(any));
        }
    }

    /**
     * A text read.
     *
     * @param folded its words, folded
     * @param stems  of those words, in the text's language; empty where a word says nothing
     * @param starts where its words begin
     * @param stops  where its words end
     * @param ends   where its sentences end
     */
    private record Text(String text, String[] folded, String[] stems, int[] starts, int[] stops, int[] ends) {
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
                while (starts[i] >= ends[sentence]) {
                    sentence++;
                    worth = 0;
                    found.clear();
                }
                double one = marks.worth(stems[i], folded[i]);
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
                boolean within = starts[i] >= start && stops[i] <= start + shown.length();
                if (within && marks.worth(stems[i], folded[i]) > 0) {
                    spans.add(new Marked.Span(starts[i] - start, stops[i] - start));
                }
            }
            spans.sort(Comparator.comparingInt(Marked.Span::from));
            return new Marked(shown, spans);
        }
    }
}
