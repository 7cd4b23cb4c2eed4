package fencerow.content;

import fencerow.desk.Settings;
import fencerow.explainers.Library;
import fencerow.terms.TopicId;
import fencerow.visit.Showroom;
import fencerow.wording.PseudoLocale;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything the kiosk runs on, read from {@code content/} and {@code kiosk-config/}.
 *
 * @param showroom  what the showroom offers, asks and has in stock
 * @param texts     the words, by language
 * @param libraries articles, glossary and pictures, by language; of languages not offered, words to search by alone
 * @param settings  what the showroom sets
 * @param aliases   the topic that each of shoppers' own words means; for the search, never shown
 * @param translations how far each language with words of its own is translated, offered or not
 * @param legibility how easy the longer texts of each language are to read; empty where they were not reviewed
 * @param places    where each record was written
 * @param units     works out what rows of a stock list come to
 * @param version   changes whenever a source file does: the first 8 hex digits of a SHA-256 over all of them
 */
public record Content(
        Showroom showroom,
        Map<String, Texts> texts,
        Map<String, Library> libraries,
        Settings settings,
        Map<String, TopicId> aliases,
        Map<String, Translation> translations,
        Map<String, List<Legibility>> legibility,
        Places places,
        UnitReader units,
        String version) {
    /** Copies the maps. */
    public Content {
        texts = Map.copyOf(texts);
        libraries = Map.copyOf(libraries);
        aliases = Map.copyOf(aliases);
        translations = Map.copyOf(translations);
        legibility = Map.copyOf(legibility);
    }

    /** The words of a language. @throws IllegalArgumentException if it is not offered */
    public Texts getTexts(String language) {
        return get(texts, language);
    }

    /** The articles of a language. @throws IllegalArgumentException if it is not offered */
    public Library getLibrary(String language) {
        return get(libraries, language);
    }

    private static <T> T get(Map<String, T> byLanguage, String language) {
        T found = byLanguage.get(language);
        if (found == null) {
            throw new IllegalArgumentException("there is nothing in language [" + language + "]; use one of "
                    + byLanguage.keySet().stream().sorted().toList());
        }
        return found;
    }

    /** The same with another stock. */
    public Content with(Showroom other) {
        return new Content(other, texts, libraries, settings, aliases, translations, legibility, places, units,
                version);
    }

    /** The same with a language more: the first one with accents on every letter and longer words, to test screens. */
    public Content withPseudoLocale() {
        if (texts.containsKey(PseudoLocale.LANGUAGE)) {
            return this;
        }
        String first = settings.languages().get(0);
        Map<String, Texts> moreTexts = new LinkedHashMap<>(texts);
        moreTexts.put(PseudoLocale.LANGUAGE, PseudoLocale.of(getTexts(first)));
        Map<String, Library> moreLibraries = new LinkedHashMap<>(libraries);
        moreLibraries.put(PseudoLocale.LANGUAGE, PseudoLocale.of(getLibrary(first)));
        List<String> languages = new ArrayList<>(settings.languages());
        languages.add(PseudoLocale.LANGUAGE);
        var offered = new Settings(settings.name(), languages, settings.metric(), settings.idle(), settings.panel(),
                settings.paper(), settings.pin(), settings.comeBackDays());
        return new Content(showroom, moreTexts, moreLibraries, offered, aliases, translations, legibility, places,
                units, version);
    }
}
