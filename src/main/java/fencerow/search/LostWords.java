package fencerow.search;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What may be kept of a query that found nothing, as a hint at what the content lacks.
 *
 * <p>Only ordinary English words are: whatever is not known to be one may be a name. Numbers, mail addresses and street
 * addresses go whole, and so do the words after "my name is" and the like. Words of other languages are lost by this.
 */
public final class LostWords {
    private static final String WORDS = "ordinary-words.list";
    private static final int MOST = 6;
    private static final String STREET = "(?:street|st|avenue|ave|road|rd|lane|ln|drive|dr|court|ct|boulevard|blvd"
            + "|place|pl|way|circle|cir|highway|hwy|route|rte|trail|terrace|loop|pike|parkway|pkwy)";
    /** Mail addresses, house number and street, any street by its full name, box numbers, introductions. */
    private static final Pattern PERSONAL = Pattern.compile("\\S+@\\S+"
            + "|\\b\\d+\\w?\\s+(?:\\p{L}+\\.?\\s+){0,4}?" + STREET + "\\b.*"
            + "|(?:\\b\\p{L}+\\s+){1,2}(?:street|avenue|boulevard|highway|parkway)\\b.*"
            + "|\\b(?:calle|avenida|carretera|camino)\\s.*"
            + "|\\bp\\.?\\s?o\\.?\\s?box\\b.*"
            + "|\\b(?:my name is|name is|i am|i'm|im|this is|call me|me llamo|mi nombre es|soy)\\s+\\S+(?:\\s+\\S+)?"
            + "|\\b(?:mr|mrs|ms|miss|dr|don|do\u00f1a|sr|sra)\\.?\\s+\\S+(?:\\s+\\S+)?");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}'\u2019.@#]+");

    private final Set<String> ordinary;

    private LostWords(Set<String> ordinary) {
        this.ordinary = Set.copyOf(ordinary);
    }

    /** Reads the list of ordinary words. */
    public static LostWords load() {
        try (InputStream in = LostWords.class.getResourceAsStream(WORDS)) {
            if (in == null) {
                throw new IllegalStateException("the list [" + WORDS + "] is missing beside " + LostWords.class);
            }
            var lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            return new LostWords(lines.lines().filter(line -> !line.startsWith("#")).collect(Collectors.toSet()));
        } catch (IOException e) {
            throw new UncheckedIOException("the list [" + WORDS + "] could not be read", e);
        }
    }

    /**
     * The words that may be kept, in lower case and in their order; empty if nothing may.
     *
     * @param text a query as typed
     */
    public List<String> of(String text) {
        String cut = text.substring(0, Math.min(text.length(), Query.LONGEST));
        String rest = PERSONAL.matcher(cut.toLowerCase(Locale.ROOT)).replaceAll(" ");
        return WORD.matcher(rest).results()
                .map(MatchResult::group)
                .map(word -> word.replaceAll("^[.']+|[.']+$", ""))
                .filter(ordinary::contains)
                .limit(MOST)
                .toList();
    }
}
