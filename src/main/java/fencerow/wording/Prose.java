package fencerow.wording;

import com.ibm.icu.text.BreakIterator;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Counts sentences, words and syllables of running text.
 *
 * @param locale     English or Spanish
 * @param tradeWords words that readers here have to learn anyway, or know: their syllables are not weighed
 */
public record Prose(Locale locale, Set<String> tradeWords) {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:['\u2019-][\\p{L}\\p{N}]+)*");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}+(?:'\\p{L}+)?");
    private static final Pattern INITIALS = Pattern.compile("\\p{Lu}{2,5}");

    /** Keeps the trade words in lower case. */
    public Prose {
        tradeWords = tradeWords.stream().map(word -> word.toLowerCase(locale)).collect(Collectors.toUnmodifiableSet());
    }

    /** What is counted in texts that stand apart, such as the points of a list; empty if there is no word to weigh. */
    public Optional<Readability> measure(Collection<String> texts) {
        int sentences = 0;
        int words = 0;
        int weighed = 0;
        int syllables = 0;
        for (String text : texts) {
            for (String sentence : sentences(text)) {
                Matcher matcher = WORD.matcher(sentence);
                int before = words;
                while (matcher.find()) {
                    String word = matcher.group().replace('\u2019', '\'');
                    words++;
                    if (isWeighed(word)) {
                        weighed++;
                        syllables += syllables(word);
                    }
                }
                sentences += words > before ? 1 : 0;
            }
        }
        return weighed == 0 ? Optional.empty() : Optional.of(new Readability(sentences, words, weighed, syllables));
    }

    /** How many words the longest sentence has. */
    public int longestSentence(Collection<String> texts) {
        return texts.stream()
                .flatMap(text -> sentences(text).stream())
                .mapToInt(sentence -> (int) WORD.matcher(sentence).results().count())
                .max()
                .orElse(0);
    }

    private Collection<String> sentences(String text) {
        BreakIterator iterator = BreakIterator.getSentenceInstance(locale);
        iterator.setText(text);
        var found = new ArrayList<String>();
        int from = iterator.first();
        for (int to = iterator.next(); to != BreakIterator.DONE; to = iterator.next()) {
            found.add(text.substring(from, to));
            from = to;
        }
        return found;
    }

    private boolean isWeighed(String word) {
        String lower = word.toLowerCase(locale);
        boolean plural = lower.endsWith("s") && tradeWords.contains(lower.substring(0, lower.length() - 1));
        boolean manyes = lower.endsWith("es") && tradeWords.contains(lower.substring(0, lower.length() - 2));
        return !tradeWords.contains(lower) && !plural && !manyes
                && word.codePoints().noneMatch(Character::isDigit);
    }

    private int syllables(String word) {
        if (INITIALS.matcher(word).matches()) {
            return word.length(); // each letter is spoken
        }
        ToIntFunction<String> count =
                locale.getLanguage().equals("es") ? SpanishSyllables::count : EnglishSyllables::count;
        Matcher parts = LETTERS.matcher(word.toLowerCase(locale));
        int sum = 0;
        while (parts.find()) {
            sum += count.applyAsInt(parts.group());
        }
        return Math.max(1, sum);
    }
}
