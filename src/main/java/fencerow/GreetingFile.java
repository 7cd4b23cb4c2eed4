package fencerow;

import fencerow.kiosk.frame.Greeting;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/**
 * The greeting of the next start, in the data folder. Without it, or where it cannot be read, a start shows nothing at
 * first.
 */
final class GreetingFile {
    private static final System.Logger LOG = System.getLogger(GreetingFile.class.getName());
    private static final String DIAGONAL = "panel-metres";
    private static final long MOST_BYTES = 20_000;

    private final Path file;

    GreetingFile(Path dataFolder) {
        this.file = dataFolder.resolve("greeting.properties");
    }

    Optional<Greeting> find() {
        Properties read = new Properties();
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            try (Reader in = Files.newBufferedReader(file)) {
                read.load(in);
            }
            Map<String, String> words = new HashMap<>();
            read.stringPropertyNames().forEach(name -> words.put(name, read.getProperty(name, "")));
            double diagonal = Double.parseDouble(words.getOrDefault(DIAGONAL, ""));
            words.remove(DIAGONAL);
            return diagonal > 0 && diagonal < 10 ? Optional.of(new Greeting(diagonal, words)) : Optional.empty();
        } catch (IOException | IllegalArgumentException e) {
            LOG.log(System.Logger.Level.WARNING, "The greeting cannot be read; the next one replaces it", e);
            return Optional.empty();
        }
    }

    void keep(Greeting greeting) {
        Properties kept = new Properties();
        kept.putAll(greeting.words());
        kept.setProperty(DIAGONAL, Double.toString(greeting.diagonalMetres()));
        Path fresh = file.resolveSibling("greeting.tmp");
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try (Writer out = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
                kept.store(out, null);
            }
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "The greeting of the next start cannot be kept", e);
        }
    }
}
