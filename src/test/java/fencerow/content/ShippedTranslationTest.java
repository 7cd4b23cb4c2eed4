package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The shipped languages against each other, read without our own readers. */
class ShippedTranslationTest {
    private static final Path CONTENT = Path.of("content");
    private static final Pattern LANGUAGES_OWN = Pattern.compile("glossary\\..*\\.(also|topic)");

    @Test
    void noKeyIsMissingOrLeftOverInEitherLanguageAndEachIsInTheFileOfTheSameName() throws IOException {
        Map<String, String> english = words("en");
        Map<String, String> spanish = words("es");
        assertTrue(english.size() > 3_000, () -> "only " + english.size());
        assertEquals(List.of(), missing(english, spanish), "missing in Spanish");
        assertEquals(List.of(), missing(spanish, english), "left over in Spanish");
    }

    @Test
    void everyArticleIsThereInBothLanguages() throws IOException {
        assertEquals(articles("en"), articles("es"));
        assertTrue(articles("en").size() > 70);
    }

    /** The file of each key. */
    private static Map<String, String> words(String language) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(CONTENT.resolve(language))) {
            for (Path file : all.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
                Object top = new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
                flatten("", top, file.getFileName().toString(), files);
            }
        }
        return files;
    }

    private static void flatten(String key, Object value, String file, Map<String, String> files) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((part, below) -> flatten(key.isEmpty() ? "" + part : key + "." + part, below, file, files));
        } else if (!LANGUAGES_OWN.matcher(key).matches()) {
            files.put(key, file);
        }
    }

    private static List<String> missing(Map<String, String> from, Map<String, String> in) {
        List<String> missing = new ArrayList<>();
        from.forEach((key, file) -> {
            if (!file.equals(in.get(key))) {
                missing.add(file + ": " + key);
            }
        });
        return missing;
    }

    private static Set<String> articles(String language) throws IOException {
        var names = new TreeSet<String>();
        try (Stream<Path> all = Files.list(CONTENT.resolve(language).resolve("explainers"))) {
            all.map(file -> file.getFileName().toString()).forEach(names::add);
        }
        return names;
    }
}
