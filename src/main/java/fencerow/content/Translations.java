package fencerow.content;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Keeps which text each translation translates, so that a later change of that text shows. */
public final class Translations {
    /** The language that others are translated from. */
    public static final String ORIGINAL = "en";

    private final Path content;

    /** @param content the folder of what is true of the trade and how we say it */
    public Translations(Path content) {
        this.content = content;
    }

    /**
     * Writes down that what one language says translates the present original. Lines about what is gone are dropped.
     *
     * @param keys of words or articles, or the first parts of keys; all there are if none is named
     * @return how many translations were accepted; bad if the words cannot be read or a key is not there
     * @throws IOException if it cannot be written down
     */
    public Reading<Integer> accept(String language, Collection<String> keys) throws IOException {
        var problems = new Problems();
        SourceTree tree = SourceTree.read(content, problems);
        Map<String, TextsReader.Text> originals = read(tree, ORIGINAL, problems).byKey();
        Map<String, TextsReader.Text> own = read(tree, language, problems).byKey();
        String name = language + "/" + TranslatedFile.NAME;
        var kept = tree.find(name).map(file -> new TranslatedFile(file, new Problems())).orElse(new TranslatedFile());
        Map<String, String> fingerprints = new TreeMap<>();
        int accepted = 0;
        for (String key : own.keySet()) {
            Optional<String> now = Optional.ofNullable(originals.get(key)).map(text -> Fingerprint.of(text.words()));
            Optional<String> before =
                    Optional.ofNullable(kept.entries().get(key)).map(TranslatedFile.Entry::fingerprint);
            boolean meant = keys.isEmpty() || keys.stream().anyMatch(named -> isMeant(key, named));
            accepted += meant && now.isPresent() ? 1 : 0;
            now.flatMap(present -> meant ? now : before).ifPresent(print -> fingerprints.put(key, print));
        }
        for (String named : keys) {
            if (own.keySet().stream().noneMatch(key -> isMeant(key, named))) {
                problems.error(new Place(tree.nameOf(language), 1), "there is nothing translated under [" + named + "]",
                        Nearest.advice(named, own.keySet(), "name a key as the files spell it, its parts with dots, or "
                                + Translatable.ARTICLES + " and a topic"));
            }
        }
        if (problems.hasErrors()) {
            return new Reading.Bad<>(problems.errors(), problems.warnings());
        }
        Files.write(content.resolve(name), TranslatedFile.text(fingerprints).getBytes(StandardCharsets.UTF_8));
        return new Reading.Good<>(accepted, List.of());
    }

    private static boolean isMeant(String key, String named) {
        return key.equals(named) || key.startsWith(named + ".");
    }

    private static Translatable read(SourceTree tree, String language, Problems problems) {
        var reader = new TextsReader(problems);
        List<String> files = tree.names(name -> name.matches(language + "/[^/]+\\.yaml"));
        if (files.isEmpty() && tree.isThere()) {
            problems.error(new Place(tree.nameOf(language), 1), "there are no words in language [" + language + "]",
                    "name a language with a folder of its own");
        }
        files.forEach(name -> tree.find(name)
                .flatMap(file -> YamlFile.read(file, problems))
                .ifPresent(reader::read));
        var words = new Translatable(reader.texts());
        tree.names(name -> name.matches(language + "/" + Translatable.ARTICLES + "[^/]+\\.md"))
                .forEach(name -> tree.find(name)
                        .flatMap(file -> Article.of(file, problems))
                        .ifPresent(words::add));
        return words;
    }
}
