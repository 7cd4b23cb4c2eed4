package fencerow.printing;

import fencerow.wording.Texts;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** How printing went, or goes. Each has words for the shopper: what is so, and what to do. */
public sealed interface PrintOutcome {
    /** The pages lie in the tray. */
    record Printed() implements PrintOutcome {}

    /**
     * The printer has the job and is at work or waits.
     *
     * @param job      its number, to follow or cancel it by
     * @param waitsFor what it waits for, or soon may, where it says so
     */
    record Queued(int job, Optional<PrinterTrouble> waitsFor) implements PrintOutcome {}

    /** The platform has it; whether it gets printed is not known. */
    record HandedOver() implements PrintOutcome {}

    /** There is no printer: the pages are in a file. */
    record Saved(Path file) implements PrintOutcome {}

    /** Nothing was printed, and nothing is left in any queue. */
    record Failed(PrinterTrouble trouble) implements PrintOutcome {}

    /** The file could not be written. */
    record NotSaved() implements PrintOutcome {}

    /**
     * More copies than the showroom allows.
     *
     * @param waiting until the next may be printed; empty if this visit may print no more
     */
    record TooMany(Optional<Duration> waiting) implements PrintOutcome {}

    /** Whether there are pages to take along, or a file to ask for. */
    default boolean isDone() {
        return this instanceof Printed || this instanceof HandedOver || this instanceof Saved;
    }

    /** What is so, in words. */
    default String says(Texts texts) {
        return words(texts, "says");
    }

    /** What to do now, in words: there is always a way on. */
    default String todo(Texts texts) {
        return words(texts, "do");
    }

    private String words(Texts texts, String part) {
        long minutes = this instanceof TooMany many ? many.waiting().map(PrintOutcome::minutes).orElse(0L) : 0;
        return texts.get("paper.printer." + id() + "." + part, Map.of("minutes", minutes));
    }

    private static long minutes(Duration waiting) {
        return Math.max(1, (waiting.toSeconds() + 59) / 60);
    }

    /** The word used in text keys, below {@code paper.printer}. */
    default String id() {
        if (this instanceof Printed) {
            return "printed";
        }
        if (this instanceof Queued queued) {
            return queued.waitsFor().filter(PrinterTrouble::stops).map(PrinterTrouble::id).orElse("queued");
        }
        if (this instanceof HandedOver) {
            return "handed-over";
        }
        if (this instanceof Saved) {
            return "saved";
        }
        if (this instanceof Failed failed) {
            return failed.trouble().id();
        }
        if (this instanceof TooMany many) {
            return many.waiting().isPresent() ? "copies-hour" : "copies-visit";
        }
        return "not-saved";
    }
}
