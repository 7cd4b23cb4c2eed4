package fencerow.content;

import fencerow.wording.TextPattern;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Reads the words of one language: any number of YAML files, their nested keys joined by dots. */
final class TextsReader {
    private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final int LONGEST = 4_000;

    private final Problems problems;
    private final Map<String, Text> texts = new TreeMap<>();

    TextsReader(Problems problems) {
        this.problems = problems;
    }

    /** Words and where they are written. */
    record Text(String words, Place place) {}

    /** Takes in one file. */
    void read(YamlNode top) {
        flatten("", top);
    }

    private void flatten(String prefix, YamlNode node) {
        for (YamlNode.Entry entry : node.entries()) {
            if (!KEY.matcher(entry.key()).matches()) {
                problems.error(entry.place(), "the key [" + entry.key() + "] is not spelt as one",
                        "use lower-case letters, digits and single hyphens");
                continue;
            }
            String key = prefix + entry.key();
            if (entry.value().isMap()) {
                flatten(key + ".", entry.value());
            } else {
                take(key, entry);
            }
        }
    }

    private void take(String key, YamlNode.Entry entry) {
        String words = entry.value().text();
        if (words.length() > LONGEST) {
            problems.error(entry.place(), "[" + key + "] has " + words.length() + " characters",
                    "shorten it; " + LONGEST + " is the most");
        }
        TextPattern.flaw(words).ifPresent(flaw -> problems.error(entry.place(),
                "[" + key + "] has a flaw in its braces: " + flaw, "write {name}, or put quotes around a brace: '{'"));
        Optional<Text> first = Optional.ofNullable(texts.putIfAbsent(key, new Text(words, entry.place())));
        first.ifPresent(other -> problems.error(entry.place(),
                "there are words for [" + key + "] already at " + other.place(), "delete one of them"));
    }

    /** All words by key. */
    Map<String, Text> texts() {
        return texts;
    }
}
