package fencerow.content;

import fencerow.explainers.GlossaryWord;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BinaryOperator;

/** Makes the glossary of a language from its words under {@code glossary}. */
final class GlossaryReader {
    private static final String PREFIX = "glossary.";

    private final Ids ids;
    private final Map<String, TextsReader.Text> original;

    /** With the words of the original, which say the topic of each word for all languages. */
    GlossaryReader(Ids ids, Map<String, TextsReader.Text> original) {
        this.ids = ids;
        this.original = original;
    }

    /** The second parts of the keys that start with the prefix, each with the first place of its words. */
    static Map<String, Place> idsUnder(String prefix, Map<String, TextsReader.Text> texts) {
        Map<String, Place> found = new TreeMap<>();
        texts.forEach((key, text) -> {
            if (key.startsWith(prefix)) {
                String id = key.substring(prefix.length()).split("\\.", 2)[0];
                found.merge(id, text.place(), BinaryOperator.minBy(Comparator.naturalOrder()));
            }
        });
        return found;
    }

    List<GlossaryWord> read(Map<String, TextsReader.Text> texts) {
        List<GlossaryWord> words = new ArrayList<>();
        for (String id : idsUnder(PREFIX, texts).keySet()) {
            Optional<TextsReader.Text> word = find(texts, id, "word");
            Optional<TextsReader.Text> means = find(texts, id, "means");
            List<String> also = find(texts, id, "also").map(text -> split(text.words())).orElse(List.of());
            Optional<TopicId> topic = find(original, id, "topic")
                    .filter(text -> ids.require(text.words(), text.place(), Kind.TOPIC))
                    .map(text -> new TopicId(text.words()));
            if (word.isPresent() && means.isPresent()) {
                words.add(new GlossaryWord(id, word.get().words(), means.get().words(), also, topic));
            }
        }
        return words;
    }

    /** What a language that is not offered calls the trade's words: enough to find them by, not to show them. */
    List<GlossaryWord> readNames(Map<String, TextsReader.Text> texts) {
        List<GlossaryWord> words = new ArrayList<>();
        for (String id : idsUnder(PREFIX, texts).keySet()) {
            find(texts, id, "word").filter(word -> ids.require(id, word.place(), Kind.WORD)).ifPresent(word ->
                    words.add(new GlossaryWord(id, word.words(), "",
                            find(texts, id, "also").map(text -> split(text.words())).orElse(List.of()),
                            Optional.empty())));
        }
        return words;
    }

    private static Optional<TextsReader.Text> find(Map<String, TextsReader.Text> texts, String id, String part) {
        return Optional.ofNullable(texts.get(PREFIX + id + "." + part));
    }

    private static List<String> split(String also) {
        return Arrays.stream(also.split(";", -1)).map(String::strip).filter(word -> !word.isEmpty()).toList();
    }
}
