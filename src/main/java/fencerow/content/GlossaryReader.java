package fencerow.content;

import fencerow.explainers.GlossaryWord;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Makes the glossary of a language from its words under {@code glossary}. */
final class GlossaryReader {
    private static final String PREFIX = "glossary.";

    private final Ids ids;

    GlossaryReader(Ids ids) {
        this.ids = ids;
    }

    /** The ids of one kind that a language has words for: the second part of keys that start with the prefix. */
    static Set<String> idsUnder(String prefix, Map<String, TextsReader.Text> texts) {
        Set<String> found = new TreeSet<>();
        for (String key : texts.keySet()) {
            if (key.startsWith(prefix)) {
                found.add(key.substring(prefix.length()).split("\\.", 2)[0]);
            }
        }
        return found;
    }

    List<GlossaryWord> read(Map<String, TextsReader.Text> texts) {
        List<GlossaryWord> words = new ArrayList<>();
        for (String id : idsUnder(PREFIX, texts)) {
            Optional<TextsReader.Text> word = find(texts, id, "word");
            Optional<TextsReader.Text> means = find(texts, id, "means");
            List<String> also = find(texts, id, "also").map(text -> split(text.words())).orElse(List.of());
            Optional<TopicId> topic = find(texts, id, "topic")
                    .filter(text -> ids.require(text.words(), text.place(), Kind.TOPIC))
                    .map(text -> new TopicId(text.words()));
            if (word.isPresent() && means.isPresent()) {
                words.add(new GlossaryWord(id, word.get().words(), means.get().words(), also, topic));
            }
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
