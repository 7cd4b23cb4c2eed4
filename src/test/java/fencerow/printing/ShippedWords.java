package fencerow.printing;

import fencerow.wording.Texts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The words and lines of the shipped content, read plainly. */
final class ShippedWords {
    private ShippedWords() {}

    /** All words of the language. */
    static Texts texts(String language) {
        Map<String, String> words = new TreeMap<>();
        try (Stream<Path> files = Files.list(Path.of("content", language))) {
            files.filter(file -> file.toString().endsWith(".yaml")).forEach(file -> flatten("", load(file), words));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Texts(language, words);
    }

    /** The entries of the list file. */
    @SuppressWarnings("unchecked")
    static List<Map<String, Object>> lines() {
        return (List<Map<String, Object>>) load(Path.of("content", "checklist.yaml"));
    }

    /** The stop of each feature, by id. */
    @SuppressWarnings("unchecked")
    static Map<String, String> stopOfFeature() {
        Map<String, String> stops = new TreeMap<>();
        ((Map<String, Map<String, Object>>) load(Path.of("content", "features.yaml")))
                .forEach((id, feature) -> stops.put(id, (String) feature.get("stop")));
        return stops;
    }

    private static Object load(Path file) {
        try {
            return new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void flatten(String prefix, Object value, Map<String, String> into) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, each) -> flatten(prefix.isEmpty() ? key + "" : prefix + "." + key, each, into));
        } else if (value != null) {
            into.put(prefix, value.toString());
        }
    }
}
