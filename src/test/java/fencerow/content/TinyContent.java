package fencerow.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A copy of the tiny showroom's files that a test may break. */
record TinyContent(Path root) {
    private static final Path ORIGINAL = Path.of("src", "test", "resources", "tiny-content");

    static TinyContent copyTo(Path root) {
        try (Stream<Path> files = Files.walk(ORIGINAL)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = root.resolve(ORIGINAL.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new TinyContent(root);
    }

    /** Replaces a text that stands in the file just once. */
    TinyContent replace(String file, String old, String replacement) {
        String text = text(file);
        int at = text.indexOf(old);
        if (at < 0 || text.indexOf(old, at + 1) >= 0) {
            throw new IllegalArgumentException("[" + old + "] does not stand in " + file + " just once");
        }
        return write(file, text.replace(old, replacement));
    }

    TinyContent write(String file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    TinyContent write(String file, byte[] bytes) {
        try {
            Files.createDirectories(root.resolve(file).getParent());
            Files.write(root.resolve(file), bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    TinyContent delete(String file) {
        try {
            Files.delete(root.resolve(file));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String text(String file) {
        return new String(bytes(file), StandardCharsets.UTF_8);
    }

    byte[] bytes(String file) {
        try {
            return Files.readAllBytes(root.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The line, from 1, on which a text first stands. */
    int lineOf(String file, String text) {
        String whole = text(file);
        int at = whole.indexOf(text);
        if (at < 0) {
            throw new IllegalArgumentException("[" + text + "] does not stand in " + file);
        }
        return 1 + (int) whole.substring(0, at).chars().filter(c -> c == '\n').count();
    }

    /** Names of all its files, sorted. */
    List<String> files() {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Reading<Content> read() {
        return new ContentReader().review(root.resolve("content"), root.resolve("kiosk-config"), Optional.empty());
    }

    /** What was read. @throws AssertionError with all problems if it cannot be used */
    Content readGood() {
        return good(read());
    }

    static <T> T good(Reading<T> reading) {
        if (reading instanceof Reading.Good<T> good) {
            return good.content();
        }
        throw new AssertionError(problems(reading).toString());
    }

    static <T> List<Problem> problems(Reading<T> reading) {
        return reading instanceof Reading.Bad<T> bad ? bad.problems() : List.of();
    }
}
