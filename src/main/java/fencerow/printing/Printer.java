package fencerow.printing;

import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;

/**
 * A way to get pages to the shopper. Calls block, at most about a second unless said otherwise, and never throw for
 * what printers do: that is an outcome. Pages stay in memory; nothing is spooled to files here.
 */
public interface Printer {
    /** What stands in the way of printing now, or soon will; empty if nothing is known to. */
    Optional<PrinterTrouble> findTrouble();

    /**
     * Prints, unless something is known to stand in the way. May take some seconds on a slow network.
     *
     * @param copies at least 1
     */
    PrintOutcome print(Printout pages, PageFormat format, int copies);

    /** How a job is doing. */
    PrintOutcome follow(PrintOutcome.Queued job);

    /** Takes a job back, so that nobody finds the pages of a shopper who has left. */
    PrintOutcome cancel(PrintOutcome.Queued job);

    /** Deletes files that are too old, and what was left half written. */
    default void tidyUp() {
        // Most printers keep none.
    }

    /**
     * The showroom's printer: by IPP at an {@code ipp://} or {@code ipps://} address, through the platform by a queue's
     * name, or files in a folder where there is neither.
     *
     * @param printer    address or name
     * @param saveFolder for files
     * @param clock      names the files
     * @throws IllegalArgumentException if the address is none
     */
    static Printer of(Optional<String> printer, Path saveFolder, Clock clock) {
        if (printer.isEmpty()) {
            return new FolderPrinter(saveFolder, clock);
        }
        String name = printer.get();
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.startsWith("ipp://") || lower.startsWith("ipps://")
                ? new IppPrinter(URI.create(name))
                : new QueuePrinter(name);
    }
}
