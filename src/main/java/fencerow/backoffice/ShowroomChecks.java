package fencerow.backoffice;

import fencerow.backoffice.document.DoctorDocument.Check;
import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.content.ShowroomLine;
import fencerow.printing.Printer;
import fencerow.printing.PrinterTrouble;
import fencerow.storage.Server;
import fencerow.storage.Store;
import fencerow.storage.UnusableStoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks at what the showroom brings: content, its age, the PIN, the printer. */
final class ShowroomChecks {
    private static final Duration OLD = Duration.ofDays(30);
    /** PostgreSQL's line that the tests run on. */
    private static final int OLDEST_SERVER = 14;

    private final Folders folders;
    private final Machine machine;
    private final Clock clock;

    ShowroomChecks(Folders folders, Machine machine, Clock clock) {
        this.folders = folders;
        this.machine = machine;
        this.clock = clock;
    }

    List<Check> all() {
        Reading<Content> reading = new ContentReader().review(folders.content(), folders.config(), folders.stock());
        List<Check> checks = new ArrayList<>();
        checks.add(content(reading));
        checks.add(age());
        String database = ShowroomLine.database(folders.config());
        if (!database.isBlank()) {
            checks.add(database(database));
        }
        if (reading instanceof Reading.Good<Content> good) {
            checks.add(pin(good.content()));
            checks.add(printer(good.content()));
        }
        return checks;
    }

    private static Check content(Reading<Content> reading) {
        if (reading instanceof Reading.Bad<Content> bad) {
            return Check.lacking("content", bad.problems().size() + " problems, the first: " + bad.problems().get(0),
                    "run fencerow check and mend what it names");
        }
        int warnings = reading.warnings().size();
        return warnings == 0
                ? Check.fine("content", "it can be shown")
                : Check.remark("content", "it can be shown, with " + warnings + " warnings", "run fencerow check");
    }

    private Check age() {
        Optional<Path> oldest = Stream.of(folders.stock().orElse(folders.config().resolve("stock.csv")),
                        folders.config().resolve("prices.csv"))
                .filter(file -> age(file).compareTo(OLD) > 0)
                .max((one, other) -> age(one).compareTo(age(other)));
        return oldest
                .map(file -> Check.remark("age", file + " was last changed " + age(file).toDays() + " days ago",
                        "see whether stock and prices still hold"))
                .orElseGet(() -> Check.fine("age", "stock and prices were changed within " + OLD.toDays() + " days"));
    }

    private Duration age(Path file) {
        try {
            return Duration.between(Files.getLastModifiedTime(file).toInstant(), clock.instant());
        } catch (IOException e) {
            return Duration.ZERO;
        }
    }

    private Check database(String url) {
        try {
            Server server = Server.find(url, machine.environment(), machine.data()).orElseThrow();
            int version = Store.tryOut(server);
            String what = server + ": the server (PostgreSQL " + version + ") keeps stock and counts";
            return version < OLDEST_SERVER
                    ? Check.remark("database", what, "nothing older than " + OLDEST_SERVER + " has been tried")
                    : Check.fine("database", what);
        } catch (UnusableStoreException e) {
            String message = String.valueOf(e.getMessage());
            int cut = message.lastIndexOf("; ");
            return Check.lacking("database", cut < 0 ? message : message.substring(0, cut),
                    cut < 0 ? "correct database: in showroom.yaml" : message.substring(cut + 2));
        }
    }

    private static Check pin(Content content) {
        return content.settings().isDemo()
                ? Check.remark("pin", "the staff door still opens by the demo PIN",
                        "set another in showroom.yaml before shoppers come")
                : Check.fine("pin", "the showroom has a PIN of its own");
    }

    private Check printer(Content content) {
        var paper = content.settings().paper();
        if (paper.printer().isEmpty()) {
            return Check.remark("printer", "none is set; lists are saved as files",
                    "set printer in showroom.yaml to an ipp:// address or a queue's name");
        }
        String name = paper.printer().get();
        Optional<PrinterTrouble> trouble = Printer.of(
                paper.printer(), machine.data().resolve(paper.saveFolder()), clock).findTrouble();
        if (trouble.isEmpty()) {
            return Check.fine("printer", "[" + name + "] takes jobs");
        }
        String what = "[" + name + "] says: " + trouble.get().id();
        return trouble.get().stops()
                ? Check.lacking("printer", what, "see to the printer, or correct its name in showroom.yaml")
                : Check.remark("printer", what, "see to the printer before long");
    }
}
