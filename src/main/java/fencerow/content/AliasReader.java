package fencerow.content;

import fencerow.terms.TopicId;
import java.util.Map;
import java.util.TreeMap;

/** Reads {@code aliases.txt}: shoppers' own words, each with the topic they mean. */
final class AliasReader {
    private static final int LONGEST = 60;

    private final Ids ids;

    AliasReader(Ids ids) {
        this.ids = ids;
    }

    Map<String, TopicId> read(SourceFile file, Problems problems) {
        Map<String, TopicId> aliases = new TreeMap<>();
        String[] lines = file.text().split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            Place place = file.at(i + 1);
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            int cut = line.indexOf('=');
            String word = cut < 0 ? "" : line.substring(0, cut).strip();
            String topic = line.substring(cut + 1).strip();
            if (word.isEmpty() || topic.isEmpty() || word.length() > LONGEST) {
                problems.error(place, "this is no word with a topic",
                        "write: shopper's word = topic id, the word at most " + LONGEST + " characters");
            } else if (ids.require(topic, place, Kind.TOPIC)
                    && aliases.put(word, new TopicId(topic)) != null) {
                problems.error(place, "the word [" + word + "] is already there", "delete one of the lines");
            }
        }
        return aliases;
    }
}
