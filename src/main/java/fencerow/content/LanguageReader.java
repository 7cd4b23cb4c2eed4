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
    private final Map<String, Map<String, TextsReader.Text>> texts = new LinkedHashMap<>();
    private final Set<String> incomplete = new HashSet<>();

    LanguageReader(Sources sources, Ids ids, Problems problems) {
        this.sources = sources;
        this.ids = ids;
        this.problems = problems;
    }

    /** Reads the words and declares what they bring along: glossary, cautions and the topics of articles. */
    void declare(List<String> languages) {
        for (String language : languages) {
            var reader = new TextsReader(problems);
            List<String> files = sources.contentNames(language + "/", "", ".yaml");
            if (files.isEmpty()) {
                incomplete.add(language);
            }
            if (files.isEmpty() && sources.hasContent()) {
                problems.error(new Place(sources.contentName(language), 1), "there are no words in language ["
                        + language + "]", "add a folder of this name with the words, or take the language out of"
                        + " showroom.yaml");
            }
            for (String file : files) {
                Optional<YamlNode> top = sources.contentYaml(file);
                top.ifPresent(reader::read);
                if (top.isEmpty()) {
                    incomplete.add(language);
                }
            }
            texts.put(language, reader.texts());
            for (String article : articles(language)) {
                String topic = ExplainerReader.topicOf(article);
                if (ids.find(Kind.TOPIC, topic).isEmpty()) {
                    ids.declare(Kind.TOPIC, topic, new Place(sources.contentName(article), 1));
                }
            }
        }
        String first = languages.get(0);
        if (incomplete.contains(first)) {
            ids.markIncomplete(Kind.WORD);
            ids.markIncomplete(Kind.CAUTION);
        }
        declareKeys(Kind.WORD, "glossary.", textsOf(first));
        declareKeys(Kind.CAUTION, "caution.", textsOf(first));
    }

    private Map<String, TextsReader.Text> textsOf(String language) {
        return texts.getOrDefault(language, Map.of());
    }

    private List<String> articles(String language) {
        return sources.contentNames(language + ARTICLES, "", ".md");
    }

    private void declareKeys(Kind kind, String prefix, Map<String, TextsReader.Text> words) {
        GlossaryReader.idsUnder(prefix, words).forEach((id, place) -> ids.declare(kind, id, place));
    }

    /** Reads all articles; each topic, and each feature, needs one in every language. */
    Map<String, Library> libraries(List<String> languages, List<Feature> features) {
        Map<String, Library> libraries = new LinkedHashMap<>();
        var reader = new ExplainerReader(ids, new IdLists(ids), problems);
        for (String language : languages) {
            List<Explainer> explainers = new ArrayList<>();
            Set<String> written = new HashSet<>();
            for (String name : articles(language)) {
                written.add(ExplainerReader.topicOf(name));
                sources.article(name).flatMap(file -> reader.read(file, language)).ifPresent(explainers::add);
            }
            requireAll(Kind.FEATURE, written, language);
            requireAll(Kind.TOPIC, written, language);
            explainers.sort(readingOrder(features));
            libraries.put(language, new Library(language, explainers, new GlossaryReader(ids).read(textsOf(language))));
        }
        return libraries;
    }

    /** The words of languages that are not offered, where they have a glossary: they still lead to the same things. */
    Map<String, Library> otherWords(List<String> languages) {
        Map<String, Library> libraries = new LinkedHashMap<>();
        for (String language : sources.glossaryLanguages()) {
            if (!languages.contains(language)) {
                var reader = new TextsReader(problems);
                sources.contentYaml(language + "/glossary.yaml").ifPresent(reader::read);
                libraries.put(language,
                        new Library(language, List.of(), new GlossaryReader(ids).readNames(reader.texts())));
            }
        }
        return libraries;
    }

    private void requireAll(Kind kind, Set<String> written, String language) {
        for (String id : ids.all(kind)) {
            if (!written.contains(id)) {
                problems.error(ids.placeOf(kind, id), "there is no article on [" + id + "] in language [" + language
                        + "]", "write " + sources.contentName(language + ARTICLES + id + ".md"));
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

    /** Holds all languages' words against what the records ask for. */
    void check(List<String> languages, Trade trade) {
        Map<String, TextsReader.Text> first = textsOf(languages.get(0));
        Map<String, Boolean> lines = trade.lines().stream()
                .collect(Collectors.toMap(LineTemplate::id, line -> line.feature().isPresent(), (a, b) -> a));
        WordCheck check = new WordCheck(ids, new Place(sources.contentName("capabilities.yaml"), 1), problems)
                .features(trade.features())
                .jobs(trade.jobs())
                .questions(trade.questions())
                .quiz(trade.quiz())
                .lines(lines, first.keySet())
                .worksheets(trade.worksheets());
        for (String language : languages) {
            check.check(language, textsOf(language), first, !incomplete.contains(language));
            LengthCheck.check(textsOf(language), problems);
        }
    }

    /** The words of one language, with those of the strip that the showroom sets. */
    Texts texts(String language, String strip) {
        Map<String, String> patterns = new TreeMap<>();
        textsOf(language).forEach((key, text) -> patterns.put(key, text.words()));
        patterns.put("showroom.strip", strip);
        return new Texts(language, patterns);
    }
}
