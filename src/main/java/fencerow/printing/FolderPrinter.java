package fencerow.printing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Saves pages into a folder, named by the time. A file is written aside and moved, so that nobody opens half of one;
 * what a crash left aside is swept away by the next.
 *
 * @param folder made where it is missing
 * @param clock  names the files
 */
record FolderPrinter(Path folder, Clock clock) implements Printer {
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("'list-'yyyyMMdd-HHmmss", Locale.ROOT);
    private static final String ASIDE = ".part";

    @Override
    public Optional<PrinterTrouble> findTrouble() {
        return Optional.empty();
    }

    @Override
    public PrintOutcome print(Printout pages, PageFormat format, int copies) {
        try {
            Files.createDirectories(folder);
            sweep();
            return new PrintOutcome.Saved(save(pages.pdf()));
        } catch (IOException e) {
            return new PrintOutcome.NotSaved();
        }
    }

    private Path save(byte[] pdf) throws IOException {
        String name = NAME.format(LocalDateTime.now(clock));
        Path aside = Files.createTempFile(folder, name, ASIDE);
        Files.write(aside, pdf, StandardOpenOption.TRUNCATE_EXISTING);
        Path file = folder.resolve(name + ".pdf");
        for (int i = 2; Files.exists(file); i++) {
            file = folder.resolve(name + "-" + i + ".pdf");
        }
        return Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE);
    }

    private void sweep() throws IOException {
        List<Path> left;
        try (Stream<Path> files = Files.list(folder)) {
            left = files.filter(file -> file.toString().endsWith(ASIDE)).toList();
        }
        for (Path file : left) {
            Files.deleteIfExists(file);
        }
    }

    @Override
    public PrintOutcome follow(PrintOutcome.Queued job) {
        throw new IllegalStateException("a folder has no jobs to follow");
    }

    @Override
    public PrintOutcome cancel(PrintOutcome.Queued job) {
        throw new IllegalStateException("a folder has no jobs to cancel");
    }
}
