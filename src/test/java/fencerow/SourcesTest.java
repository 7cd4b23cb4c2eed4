package fencerow;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the files of the repository to its rules of length, place and name. */
class SourcesTest {

    private static final Path HERE = Path.of("").toAbsolutePath();
    private static final Set<String> TOP =
            Set.of("pom.xml", "README.md", "DEVELOPERS.md", "src", "content", "kiosk-config", "target");
    private static final Set<String> TEXT =
            Set.of("java", "css", "html", "properties", "txt", "sql", "md", "yaml", "json", "svg", "cmd");
    private static final Pattern PUT_OFF = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");
    private static final int LONGEST_FILE = 300;
    private static final int LONGEST_LINE = 120;

    @Test
    void theTopLevelHoldsNothingElse() throws IOException {
        try (Stream<Path> files = Files.list(HERE)) {
            List<String> strays = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !TOP.contains(name))
                    .sorted()
                    .toList();
            assertTrue(strays.isEmpty(), () -> "the top level holds " + strays + "; only " + TOP + " belong there");
        }
    }

    @Test
    void noSourceFileIsLong() {
        assertNone(found("src/main", (file, wrong) -> {
            int lines = lines(file).size();
            if (lines > LONGEST_FILE) {
                wrong.add(file + ": " + lines + " lines; split it, " + LONGEST_FILE + " is the most");
            }
        }));
    }

    @Test
    void linesOfJavaFitTheScreenAndPutNothingOff() {
        assertNone(found("src", (file, wrong) -> {
            if (file.toString().endsWith(".java")) {
                List<String> lines = lines(file);
                for (int i = 0; i < lines.size(); i++) {
                    String line = lines.get(i);
                    String where = file + ":" + (i + 1) + ": ";
                    if (line.length() > LONGEST_LINE) {
                        wrong.add(where + line.length() + " characters; break it, " + LONGEST_LINE + " are the most");
                    }
                    if (line.contains("\t")) {
                        wrong.add(where + "a tab; indent by four blanks");
                    }
                    if (PUT_OFF.matcher(line).find()) {
                        wrong.add(where + "work put off; do it or leave it out");
                    }
                }
            }
        }));
    }

    @Test
    void fileNamesAreAscii() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (String top : List.of("src", "content", "kiosk-config")) {
            if (Files.isDirectory(HERE.resolve(top))) {
                try (Stream<Path> files = Files.walk(HERE.resolve(top))) {
                    files.map(HERE::relativize)
                            .filter(file -> !file.toString().matches("[!-~]+"))
                            .forEach(file -> wrong.add(file + ": a name with other than plain ASCII; rename it"));
                }
            }
        }
        assertNone(wrong);
    }

    /** What a look at each text file below a folder finds; paths are given to it relative to the project. */
    private static List<String> found(String folder, BiConsumer<Path, List<String>> look) {
        List<String> wrong = new ArrayList<>();
        try (Stream<Path> files = Files.walk(HERE.resolve(folder))) {
            List<Path> texts = files.filter(Files::isRegularFile).filter(SourcesTest::isText).sorted().toList();
            assertTrue(texts.size() > 1, () -> "no sources found below " + HERE.resolve(folder));
            texts.forEach(file -> look.accept(HERE.relativize(file), wrong));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return wrong;
    }

    private static boolean isText(Path file) {
        String name = file.getFileName().toString();
        return TEXT.contains(name.substring(name.lastIndexOf('.') + 1));
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(HERE.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(file + " is not UTF-8 text", e);
        }
    }

    private static void assertNone(List<String> wrong) {
        if (!wrong.isEmpty()) {
            fail(wrong.size() + " found:\n" + String.join("\n", wrong));
        }
    }
}
