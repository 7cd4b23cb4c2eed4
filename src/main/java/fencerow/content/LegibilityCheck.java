package fencerow.content;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.Inline;
import fencerow.wording.Prose;
import fencerow.wording.Readability;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Warns of texts that are hard to read standing up: articles, and all other words of some length. English: school grade
 * 8 at most; Spanish: 55 at least on Szigriszt's scale; both: 20 words a sentence on average, 35 in the longest.
 */
final class LegibilityCheck {
    /** The highest grade of an English text. */
    static final double GRADE = 8;
    /** The lowest value of a Spanish text on Szigriszt's scale. */
    static final double EASE = 55;
    /** The most words of a sentence on average. */
    static final double MEAN_SENTENCE = 20;
    /** The most words of a sentence. */
    static final int LONGEST_SENTENCE = 35;

    /** From so many words on a text by itself is long enough to be measured. */
    private static final int LONG = 40;

    private static final Pattern ARGUMENT = Pattern.compile("\\{[^{}]*}");

    private final String language;
    private final Prose prose;
    private final Problems problems;
    private final List<Legibility> measured = new ArrayList<>();

    LegibilityCheck(String language, Set<String> tradeWords, Problems problems) {
        this.language = language;
        this.prose = new Prose(Locale.forLanguageTag(language), tradeWords);
        this.problems = problems;
    }

    /** Measures an article: its summary, its paragraphs and the points of its lists. */
    void article(Explainer explainer, Place place) {
        List<String> texts = new ArrayList<>(List.of(explainer.summary()));
        for (Block block : explainer.blocks()) {
            if (block instanceof Block.Paragraph paragraph) {
                texts.add(words(paragraph.words()));
            } else if (block instanceof Block.Points points) {
                points.points().forEach(point -> texts.add(words(point)));
            }
        }
        measure(Translatable.ARTICLES + explainer.topic(), texts, place);
    }

    private static String words(List<Inline> runs) {
        return runs.stream().map(Inline::words).collect(Collectors.joining());
    }

    /** Measures words that are long enough; an argument counts as a figure. */
    void words(Map<String, TextsReader.Text> texts) {
        new TreeMap<>(texts).forEach((key, text) -> {
            String plain = ARGUMENT.matcher(text.words()).replaceAll("1");
            if (!key.endsWith(".also") && plain.split("\\s+", -1).length >= LONG) {
                measure(key, List.of(plain), text.place());
            }
        });
    }

    private void measure(String key, Collection<String> texts, Place place) {
        int longest = prose.longestSentence(texts);
        if (longest > LONGEST_SENTENCE) {
            problems.warning(place, "[" + key + "] has a sentence of " + longest + " words", "make two of it");
        }
        prose.measure(texts).ifPresent(found -> {
            measured.add(new Legibility(key, found));
            judge(key, found, place);
        });
    }

    private void judge(String key, Readability found, Place place) {
        if (found.meanSentence() > MEAN_SENTENCE) {
            problems.warning(place, "[" + key + "] has " + Math.round(found.meanSentence()) + " words a sentence",
                    "write shorter sentences; 20 words on average are the most");
        }
        if (language.equals("en") && found.fleschKincaidGrade() > GRADE) {
            problems.warning(place, "[" + key + "] takes grade " + tenths(found.fleschKincaidGrade()) + " to read",
                    "use shorter words and sentences; grade 8 is the most");
        }
        if (language.equals("es") && found.szigriszt() < EASE) {
            problems.warning(place, "[" + key + "] has " + tenths(found.szigriszt()) + " on Szigriszt's scale",
                    "use shorter words and sentences; 55 is the least");
        }
    }

    private static String tenths(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** All that was measured. */
    List<Legibility> measured() {
        return List.copyOf(measured);
    }
}
