package fencerow.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** All text files of one folder, read once, by their names below it. */
final class SourceTree {
    private static final int MOST_FILES = 5_000;
    private static final int DEEPEST = 6;

    private final String name;
    private final boolean there;
    private final Map<String, Optional<SourceFile>> files;

    private SourceTree(String name, boolean there, Map<String, Optional<SourceFile>> files) {
        this.name = name;
        this.there = there;
        this.files = files;
    }

    /** Reads the YAML, Markdown, CSV, TSV, text and SVG files below a folder. */
    static SourceTree read(Path root, Problems problems) {
        Path last = root.toAbsolutePath().normalize().getFileName();
        String name = last == null ? "/" : last.toString();
        Map<String, Optional<SourceFile>> files = new TreeMap<>();
        if (!Files.isDirectory(root)) {
            problems.error(new Place(name, 1), "there is no such folder", "create it or name another one");
            return new SourceTree(name, false, files);
        }
        try (Stream<Path> all = Files.walk(root, DEEPEST)) {
            List<Path> found = all.filter(SourceTree::isSource).sorted().limit(MOST_FILES + 1).toList();
            if (found.size() > MOST_FILES) {
                problems.error(new Place(name, 1), "there are more than " + MOST_FILES + " files",
                        "check that this is the right folder");
                return new SourceTree(name, false, files);
            }
            for (Path file : found) {
                String relative = root.relativize(file).toString().replace('\\', '/');
                files.put(relative, SourceFile.read(file, name + "/" + relative, problems));
            }
        } catch (IOException | UncheckedIOException e) {
            problems.error(new Place(name, 1), "the folder cannot be read", "check that this user may read it");
            return new SourceTree(name, false, files);
        }
        return new SourceTree(name, true, files);
    }

    private static boolean isSource(Path file) {
        String name = file.getFileName().toString();
        return !name.startsWith(".")
                && Stream.of(".yaml", ".md", ".csv", ".tsv", ".txt", ".svg").anyMatch(name::endsWith)
                && Files.isRegularFile(file);
    }

    /** Whether the folder could be read. */
    boolean isThere() {
        return there;
    }

    /** How problems name a file of this folder, whether it is there or not. */
    String nameOf(String relative) {
        return name + "/" + relative;
    }

    /** The file with the name below the folder, if it could be read. */
    Optional<SourceFile> find(String relative) {
        return files.getOrDefault(relative, Optional.empty());
    }

    /** Whether a problem was reported already that keeps the file, or the folder, from being read. */
    boolean isBroken(String relative) {
        return !there || files.containsKey(relative) && find(relative).isEmpty();
    }

    /** Names below the folder that pass the test, sorted; also of files that could not be read. */
    List<String> names(Predicate<String> test) {
        return files.keySet().stream().filter(test).toList();
    }

    /** Texts of all files that were read, by name below the folder. */
    Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        files.forEach((relative, file) -> file.ifPresent(read -> texts.put(relative, read.text())));
        return texts;
    }
}
