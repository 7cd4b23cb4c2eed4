package fencerow.content;

import fencerow.desk.Settings;
import fencerow.explainers.Library;
import fencerow.explainers.Pictures;
import fencerow.wording.PseudoLocale;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads {@code content/} and {@code kiosk-config/} into the other parts' records. Finds every problem of every file in
 * one run; content with a problem is not used at all. Needs no state of its own.
 */
public final class ContentReader {
    /**
     * Reads both folders.
     *
     * @param content       what is true of the trade and how we say it
     * @param config        what this showroom sets
     * @param stockOverride a stock list to take in place of the showroom's own
     */
    public Reading<Content> read(Path content, Path config, Optional<Path> stockOverride) {
        return read(content, config, stockOverride, false);
    }

    /** The same for who writes content: also weighs how long and how easy to read all texts are. */
    public Reading<Content> review(Path content, Path config, Optional<Path> stockOverride) {
        return read(content, config, stockOverride, true);
    }

    /** The version that content read from there would have, without reading what is in the files. */
    static String version(Path content, Path config, Optional<Path> stockOverride) {
        return Sources.read(content, config, stockOverride, new Problems()).version();
    }

    private static Reading<Content> read(Path content, Path config, Optional<Path> stockOverride, boolean review) {
        var problems = new Problems();
        var sources = Sources.read(content, config, stockOverride, problems);
        var ids = new Ids(problems);

        Optional<SettingsReader.Set> settings = sources.configYaml("showroom.yaml").flatMap(SettingsReader::read);
        List<String> languages = settings.map(set -> set.settings().languages())
                .filter(offered -> !offered.isEmpty())
                .orElse(List.of(Translations.ORIGINAL))
                .stream()
                .filter(language -> !language.equals(PseudoLocale.LANGUAGE))
                .toList();
        var words = new LanguageReader(sources, ids, problems, languages,
                languages.contains(Translations.ORIGINAL) ? Translations.ORIGINAL : languages.get(0));
        words.declare();
        var trade = new TradeReader(sources, ids, problems);
        trade.declare();
        var drawings = new PictureReader(sources, ids, problems);
        drawings.declare();

        UnitReader.Fees fees = settings.map(SettingsReader.Set::fees).orElse(UnitReader.Fees.NONE);
        Trade read = trade.read(fees);
        Map<String, Library> libraries = words.libraries(read.features());
        libraries.putAll(words.otherWords());
        Pictures pictures = drawings.read();
        libraries.replaceAll((language, library) -> library.withPictures(pictures));
        words.check(read, libraries);
        Map<String, Translation> translations = words.translations();
        Map<String, List<Legibility>> legibility = review ? words.review(libraries) : Map.of();
        var aliases = sources.config("aliases.txt")
                .map(file -> new AliasReader(ids).read(file, problems))
                .orElse(Map.of());
        sources.warnOfStrays();

        if (problems.hasErrors() || settings.isEmpty()) {
            return new Reading.Bad<>(problems.errors(), problems.warnings());
        }
        Map<String, Texts> texts = new LinkedHashMap<>();
        languages.forEach(language ->
                texts.put(language, words.texts(language, settings.get().strip().getOrDefault(language, ""))));
        Settings set = settings.get().settings();
        var good = new Content(
                read.showroom(settings.get()), texts, libraries, set, aliases, translations, legibility,
                ids.places(), read.unitReader(), sources.version());
        boolean pseudo = set.languages().contains(PseudoLocale.LANGUAGE);
        return new Reading.Good<>(pseudo ? good.withPseudoLocale() : good, problems.warnings());
    }
}
