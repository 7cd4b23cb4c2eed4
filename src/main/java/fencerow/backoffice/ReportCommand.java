package fencerow.backoffice;

import fencerow.content.TableFile;
import fencerow.desk.NotKeptException;
import fencerow.storage.Store;
import fencerow.visit.Report;
import fencerow.wording.ReportSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says what visitors did not know, looked for and could not be sold. */
@Command(name = "report", mixinStandardHelpOptions = true,
        description = {"Says what the visits of some days tell the showroom.",
            "Counts below 3 are in nothing it prints or writes."})
final class ReportCommand implements Callable<Integer> {
    private static final List<String> COLUMNS = List.of("section", "id", "name", "number", "low", "high", "words");

    private final FencerowCommand top;

    @Option(names = "--from", paramLabel = "DATE",
            description = "The first day, such as 2026-03-01. Without it, the first of this month.")
    private Optional<LocalDate> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DATE", description = "The last day. Without it, today.")
    private Optional<LocalDate> to = Optional.empty();

    @Option(names = "--out", paramLabel = "FILE", description = "Also write it as a table (CSV, or XLSX by its name).")
    private Optional<Path> out = Optional.empty();

    ReportCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException, FailedException {
        Premises premises = top.open();
        LocalDate today = LocalDate.now(top.surroundings().clock());
        LocalDate first = from.orElse(today.withDayOfMonth(1));
        LocalDate last = to.orElse(today);
        if (last.isBefore(first)) {
            throw new WrongUseException("--to " + last + " is before --from " + first + "; give the earlier day first");
        }
        try (Store store = top.openStore()) {
            Report report = Report.of(top.booked(premises, store).showroom(), store.journal().sum(first, last),
                    first, last);
            ReportSheet sheet = ReportSheet.of(report, premises.phrases(), premises.library());
            if (out.isPresent()) {
                write(out.get(), sheet);
            }
            top.print(new ReportDocument(
                    premises.language(), first.toString(), last.toString(), report.visits(), sheet.sections()),
                    () -> text(sheet));
            return FencerowCommand.FINE;
        } catch (NotKeptException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    /**
     * What {@code report --json} prints.
     *
     * @param language of the words
     * @param from     the first day, such as {@code 2026-03-01}
     * @param to       the last day
     * @param visits   how many ended; 0 for fewer than 3
     * @param sections each with its rows
     */
    record ReportDocument(
            String language, String from, String to, long visits, List<ReportSheet.Section> sections) {}

    private record Line(ReportSheet.Section section, ReportSheet.Row row) {
        private List<String> cells() {
            return List.of(section.id(), row.id(), row.name(), number(row.number()),
                    row.span().map(span -> number(span.low())).orElse(""),
                    row.span().map(span -> number(span.high())).orElse(""), row.words());
        }

        private static String number(double number) {
            return number == Math.rint(number)
                    ? Long.toString((long) number) : String.format(Locale.ROOT, "%.3f", number);
        }
    }

    private static void write(Path file, ReportSheet sheet) throws FailedException {
        List<Line> lines = sheet.sections().stream()
                .flatMap(section -> section.rows().stream().map(row -> new Line(section, row)))
                .toList();
        try {
            TableFile.write(file, "Report", COLUMNS, lines, Line::cells);
        } catch (IOException e) {
            throw new FailedException(file + " cannot be written (" + e.getClass().getSimpleName()
                    + "); check the folder, and that no other program has it open");
        }
    }

    private static String text(ReportSheet sheet) {
        var text = new TextSheet();
        text.line(0, sheet.title()).line(0, sheet.visits());
        for (ReportSheet.Section section : sheet.sections()) {
            text.heading(section.title()).line(2, section.lead());
            section.rows().forEach(row -> text.point(2, row.name() + ": " + row.words()));
        }
        return text.toString();
    }
}
