package fencerow.printing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Saves pages into a folder, named by the time. A file is written aside and moved, so that nobody opens half of one.
 * Saving and tidying up sweep away what a crash left aside, and lists that nobody came for within a day.
 *
 * @param folder made where it is missing
 * @param clock  names the files
 */
record FolderPrinter(Path folder, Clock clock) implements Printer {
    private static final System.Logger LOG = System.getLogger(FolderPrinter.class.getName());
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("'list-'yyyyMMdd-HHmmss", Locale.ROOT);
    private static final String ASIDE = ".part";
    private static final Pattern SAVED = Pattern.compile("list-\\d{8}-\\d{6}(-\\d+)?\\.pdf");
    private static final Duration KEPT = Duration.ofDays(1);
    /** Nobody writes at one file for longer. */
    private static final Duration WRITING = Duration.ofMinutes(1);

    @Override
    public Optional<PrinterTrouble> findTrouble() {
        return Optional.empty();
    }

    @Override
    public PrintOutcome print(Printout pages, PageFormat format, int copies) {
        try {
            Files.createDirectories(folder);
            sweep(Duration.ZERO);
            return new PrintOutcome.Saved(save(pages.pdf()));
        } catch (IOException e) {
            return new PrintOutcome.NotSaved();
        }
    }

    @Override
    public void tidyUp() {
        try {
            if (Files.isDirectory(folder)) {
                sweep(WRITING);
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "old lists could not be deleted: " + e.getClass().getName());
        }
    }

    private Path save(byte[] pdf) throws IOException {
        String name = NAME.format(LocalDateTime.now(clock));
        Path aside = Files.createTempFile(folder, name, ASIDE);
        try {
            Files.write(aside, pdf, StandardOpenOption.TRUNCATE_EXISTING);
            Path file = folder.resolve(name + ".pdf");
            for (int i = 2; Files.exists(file); i++) {
                file = folder.resolve(name + "-" + i + ".pdf");
            }
            return Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            // On a full disk the half that was written is in the way of everything else.
            Files.deleteIfExists(aside);
        }
    }

    private void sweep(Duration writing) throws IOException {
        List<Path> left;
        try (Stream<Path> files = Files.list(folder)) {
            left = files.toList();
        }
        for (Path file : left) {
            boolean half = file.toString().endsWith(ASIDE) && isOlder(file, writing);
            if (half || SAVED.matcher(file.getFileName().toString()).matches() && isOlder(file, KEPT)) {
                Files.deleteIfExists(file);
            }
        }
    }

    private boolean isOlder(Path file, Duration age) throws IOException {
        return age.isZero() || Files.getLastModifiedTime(file).toInstant().plus(age).isBefore(clock.instant());
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
