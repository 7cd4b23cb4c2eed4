package fencerow.wording;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.time.LocalDate;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** All words of one language by key. Immutable. */
public final class Texts {
    /** Whose way of writing numbers and money is meant where a language names no country. */
    private static final String COUNTRY = "US";

    private final String language;
    private final ULocale locale;
    private final Map<String, String> patterns;

    /**
     * Takes the words of a language.
     *
     * @param language as a BCP 47 tag
     * @param patterns ICU message patterns by key
     */
    public Texts(String language, Map<String, String> patterns) {
        this.language = language;
        ULocale named = ULocale.forLanguageTag(language.equals(PseudoLocale.LANGUAGE) ? "en" : language);
        this.locale = named.getCountry().isEmpty() ? new ULocale(named.getLanguage(), COUNTRY) : named;
        this.patterns = Map.copyOf(patterns);
    }

    /** The language, as a BCP 47 tag. */
    public String language() {
        return language;
    }

    /** The locale that numbers, money and dates follow. */
    public Locale locale() {
        return locale.toLocale();
    }

    /** All keys. */
    public Set<String> keys() {
        return patterns.keySet();
    }

    /** The words under the key. @throws IllegalArgumentException if there are none */
    public String get(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException(
                "there are no words for [" + key + "] in language [" + language + "]; add them to the content"));
    }

    /** The words under the key, if there are any. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(patterns.get(key));
    }

    /**
     * The words under the key with arguments filled in.
     *
     * @param arguments by name; numbers take part in plurals
     * @throws IllegalArgumentException if there are no words or an argument is missing from the pattern's syntax
     */
    public String get(String key, Map<String, ?> arguments) {
        return new MessageFormat(get(key), locale).format(new TreeMap<String, Object>(arguments));
    }

    /** A day in full, as the language writes it. */
    public String day(LocalDate day) {
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                FormatStyle.LONG, null, IsoChronology.INSTANCE, locale());
        return DateTimeFormatter.ofPattern(pattern, locale()).format(day);
    }
}
