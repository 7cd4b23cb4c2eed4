package fencerow.content;

import java.util.Map;
import java.util.TreeMap;

/** What of a language is translated, by key: its words, and its articles under the name of their files. */
final class Translatable {
    /** Starts the keys of articles. */
    static final String ARTICLES = "explainers/";

    private static final String GLOSSARY = "glossary.";

    private final Map<String, TextsReader.Text> byKey = new TreeMap<>();

    /** Takes the words; synonyms are each language's own, and topics are ids. */
    Translatable(Map<String, TextsReader.Text> texts) {
        texts.forEach((key, text) -> {
            if (!key.startsWith(GLOSSARY) || !key.endsWith(".also") && !key.endsWith(".topic")) {
                byKey.put(key, text);
            }
        });
    }

    /** Takes an article. */
    void add(Article article) {
        byKey.put(ARTICLES + Article.topicOf(article.file().name()),
                new TextsReader.Text(article.words(), article.file().at(1)));
    }

    Map<String, TextsReader.Text> byKey() {
        return byKey;
    }
}
