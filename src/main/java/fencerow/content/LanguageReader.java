package fencerow.content;

import fencerow.checklist.LineTemplate;
import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.terms.Feature;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Reads the folders of the languages: words and articles. */
final class LanguageReader {
    private static final String ARTICLES = "/explainers/";

    private final Sources sources;
    private final Ids ids;
    private final Problems problems;
    private final List<String> languages;
    private final String original;
    private final Map<String, Map<String, TextsReader.Text>> texts = new LinkedHashMap<>();
    private final Map<String, Translatable> translatable = new LinkedHashMap<>();
    private final Set<String> incomplete = new HashSet<>();

    /**
     * Reads nothing yet.
     *
     * @param languages that are offered, at least one
     * @param original  which of them the others are translated from
     */
    LanguageReader(Sources sources, Ids ids, Problems problems, List<String> languages, String original) {
        this.sources = sources;
        this.ids = ids;
        this.problems = problems;
        this.languages = languages;
        this.original = original;
    }

    /** Reads the words and declares what the original brings along: glossary, cautions and the topics of articles. */
    void declare() {
        for (String language : languages) {
            List<String> files = sources.contentNames(language + "/", "", ".yaml");
            if (files.isEmpty() && sources.hasContent()) {
                problems.error(new Place(sources.contentName(language), 1), "there are no words in language ["
                        + language + "]", "add a folder of this name with the words, or take the language out of"
                        + " showroom.yaml");
            }
            texts.put(language, read(language, problems));
        }
        for (String article : articles(original)) {
            String topic = Article.topicOf(article);
            if (ids.find(Kind.TOPIC, topic).isEmpty()) {
                ids.declare(Kind.TOPIC, topic, new Place(sources.contentName(article), 1));
            }
        }
        if (incomplete.contains(original)) {
            ids.markIncomplete(Kind.WORD);
            ids.markIncomplete(Kind.CAUTION);
        }
        declareKeys(Kind.WORD, "glossary.");
        declareKeys(Kind.CAUTION, "caution.");
    }

    private Map<String, TextsReader.Text> read(String language, Problems found) {
        var reader = new TextsReader(found);
        List<String> files = sources.contentNames(language + "/", "", ".yaml");
        if (files.isEmpty()) {
            incomplete.add(language);
        }
        for (String file : files) {
            Optional<YamlNode> top = sources.contentYaml(file, found);
            top.ifPresent(reader::read);
            if (top.isEmpty()) {
                incomplete.add(language);
            }
        }
        translatable.put(language, new Translatable(reader.texts()));
        return reader.texts();
    }

    private Map<String, TextsReader.Text> textsOf(String language) {
        return texts.getOrDefault(language, Map.of());
    }

    private List<String> articles(String language) {
        return sources.contentNames(language + ARTICLES, "", ".md");
    }

    private void declareKeys(Kind kind, String prefix) {
        GlossaryReader.idsUnder(prefix, textsOf(original)).forEach((id, place) -> ids.declare(kind, id, place));
    }

    /** Reads all articles; each feature needs one. */
    Map<String, Library> libraries(List<Feature> features) {
        Map<String, Library> libraries = new LinkedHashMap<>();
        var reader = new ExplainerReader(ids, new IdLists(ids), problems);
        var glossary = new GlossaryReader(ids, textsOf(original));
        for (String language : languages) {
            List<Explainer> explainers = new ArrayList<>();
            for (String name : articles(language)) {
                sources.article(name)
                        .flatMap(file -> Article.of(file, problems))
                        .flatMap(article -> {
                            translatableOf(language).add(article);
                            return reader.read(article, language);
                        })
                        .ifPresent(explainers::add);
            }
            explainers.sort(readingOrder(features));
            libraries.put(language, new Library(language, explainers, glossary.read(textsOf(language))));
        }
        requireAll(Kind.FEATURE);
        return libraries;
    }

    private Translatable translatableOf(String language) {
        return translatable.getOrDefault(language, new Translatable(Map.of()));
    }

    /** The words of languages that are not offered, where they have a glossary: they still lead to the same things. */
    Map<String, Library> otherWords() {
        Map<String, Library> libraries = new LinkedHashMap<>();
        for (String language : sources.glossaryLanguages()) {
            if (!languages.contains(language)) {
                var reader = new TextsReader(problems);
                sources.contentYaml(language + "/glossary.yaml", problems).ifPresent(reader::read);
                var glossary = new GlossaryReader(ids, textsOf(original));
                libraries.put(language, new Library(language, List.of(), glossary.readNames(reader.texts())));
            }
        }
        return libraries;
    }

    private void requireAll(Kind kind) {
        Set<String> written = articles(original).stream().map(Article::topicOf).collect(Collectors.toSet());
        for (String id : ids.all(kind)) {
            if (!written.contains(id)) {
                problems.error(ids.placeOf(kind, id), "there is no article on [" + id + "] in language [" + original
                        + "]", "write " + sources.contentName(original + ARTICLES + id + ".md"));
            }
        }
    }

    /** Around the tractor; at one stop features in their order, then other topics. */
    private static Comparator<Explainer> readingOrder(List<Feature> features) {
        List<String> order = features.stream().map(feature -> feature.id().value()).toList();
        return Comparator.comparing(Explainer::stop)
                .thenComparingInt((Explainer each) -> {
                    int index = order.indexOf(each.topic().value());
                    return index < 0 ? order.size() : index;
                })
                .thenComparing(Explainer::topic);
    }

    /** Holds the original's words against what the records ask for, and the other languages' against the original's. */
    void check(Trade trade, Map<String, Library> libraries) {
        Map<String, TextsReader.Text> first = textsOf(original);
        Map<String, Boolean> lines = trade.lines().stream()
                .collect(Collectors.toMap(LineTemplate::id, line -> line.feature().isPresent(), (a, b) -> a));
        new WordCheck(ids, new Place(sources.contentName("capabilities.yaml"), 1), problems)
                .features(trade.features())
                .jobs(trade.jobs())
                .questions(trade.questions())
                .quiz(trade.quiz())
                .lines(lines, first.keySet())
                .worksheets(trade.worksheets())
                .check(original, first, !incomplete.contains(original));
        var particulars = new ParticularsCheck(sources, problems);
        Library originals = libraries.getOrDefault(original, new Library(original, List.of(), List.of()));
        libraries.forEach((language, library) -> {
            if (!language.equals(original)) {
                library.explainers().forEach(explainer -> originals.find(explainer.topic())
                        .ifPresent(other -> particulars.check(explainer, other)));
            }
        });
    }

    /** How easy the texts of each language offered are to read; hard ones and long ones are reported. */
    Map<String, List<Legibility>> review(Map<String, Library> libraries) {
        Map<String, List<Legibility>> all = new TreeMap<>();
        for (String language : languages) {
            LengthCheck.check(textsOf(language), !language.equals(original), problems);
            Set<String> tradeWords = sources.tradeWords(language)
                    .map(file -> file.text().lines()
                            .map(String::strip)
                            .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                            .collect(Collectors.toSet()))
                    .orElse(Set.of());
            var check = new LegibilityCheck(language, tradeWords, problems);
            Optional.ofNullable(libraries.get(language)).ifPresent(library -> library.explainers().forEach(each ->
                    check.article(each, new Place(
                            sources.contentName(language + ARTICLES + each.topic() + ".md"), 1))));
            check.words(textsOf(language));
            all.put(language, check.measured());
        }
        return all;
    }

    /** How far every language with words of its own is translated; what is amiss in those offered is reported. */
    Map<String, Translation> translations() {
        Map<String, Translation> translations = new TreeMap<>();
        for (String language : sources.wordLanguages()) {
            if (!language.equals(original)) {
                Problems found = languages.contains(language) ? problems : new Problems();
                if (!languages.contains(language)) {
                    read(language, found);
                    articles(language).forEach(name -> sources.article(name)
                            .flatMap(file -> Article.of(file, found))
                            .ifPresent(translatableOf(language)::add));
                }
                Optional<TranslatedFile> kept =
                        sources.translated(language).map(file -> new TranslatedFile(file, found));
                var check = new TranslationCheck(original, translatableOf(original), found);
                translations.put(language, check.check(language, translatableOf(language), kept,
                        new Place(sources.contentName(language + "/" + TranslatedFile.NAME), 1),
                        !incomplete.contains(language)));
            }
        }
        return translations;
    }

    /** The words of one language, with those of the strip that the showroom sets. */
    Texts texts(String language, String strip) {
        Map<String, String> patterns = new TreeMap<>();
        textsOf(language).forEach((key, text) -> patterns.put(key, text.words()));
        patterns.put("showroom.strip", strip);
        return new Texts(language, patterns);
    }
}
