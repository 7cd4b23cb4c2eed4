package fencerow.backoffice;

import fencerow.backoffice.document.CheckDocument;
import fencerow.backoffice.document.LegibilityEntry;
import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Place;
import fencerow.content.Problem;
import fencerow.content.Reading;
import fencerow.printing.Sheet;
import fencerow.visit.Visit;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says everything that is wrong in content and configuration. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = "Says everything that is wrong in content and configuration: file, line, what, and what to do.")
final class CheckCommand implements Callable<Integer> {
    private static final Pattern TEMPLATE = Pattern.compile("(\\S+\\.(?:html|css)):? (.*)", Pattern.DOTALL);
    private static final Pattern LINE = Pattern.compile("line (\\d+)");

    private final FencerowCommand top;

    @Option(names = "--summary", description = "Also count what there is, and how far each area is covered.")
    private boolean summary;

    CheckCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() {
        Folders folders = top.folders();
        Reading<Content> reading = withPaper(
                new ContentReader().review(folders.content(), folders.config(), folders.stock()), folders.config());
        var document = CheckDocument.of(reading, summary);
        top.print(document, () -> text(document));
        return document.good() ? FencerowCommand.FINE : FencerowCommand.NOT_FINE;
    }

    /** Prints every sheet in every language as well, so that a broken template is found here and not by a shopper. */
    private Reading<Content> withPaper(Reading<Content> reading, Path config) {
        if (!(reading instanceof Reading.Good<Content> good)) {
            return reading;
        }
        Content content = good.content();
        List<Problem> problems = new ArrayList<>();
        try {
            PrintShop shop = PrintShop.of(content, config, top.surroundings().clock());
            for (String language : content.settings().languages()) {
                boolean metric = content.settings().metric();
                shop.print(Visit.NEW, language, metric, shop.format(false), List.of(Sheet.values()));
            }
        } catch (UncheckedIOException | IllegalArgumentException e) {
            problems.add(problem(String.valueOf(e.getMessage()), config));
        }
        return problems.isEmpty() ? reading : new Reading.Bad<>(problems, reading.warnings());
    }

    /** A complaint about the templates as a problem; where it names no template, of all of them. */
    private static Problem problem(String message, Path config) {
        Matcher named = TEMPLATE.matcher(message);
        String file = named.matches() ? named.group(1) : config.resolve("paper").toString();
        String rest = named.matches() ? named.group(2) : message;
        Matcher line = LINE.matcher(rest);
        int cut = rest.lastIndexOf("; ");
        return new Problem(
                new Place(file, line.find() ? Integer.parseInt(line.group(1)) : 1),
                cut < 0 ? rest : rest.substring(0, cut),
                cut < 0 ? "mend the template" : rest.substring(cut + 2));
    }

    private static String text(CheckDocument document) {
        var text = new StringBuilder();
        document.problems().forEach(problem -> text.append(line("", problem)));
        document.warnings().forEach(warning -> text.append(line("warning: ", warning)));
        text.append(count(document.problems().size(), "problem")).append(", ");
        text.append(count(document.warnings().size(), "warning")).append('\n');
        document.summary().ifPresent(all -> text.append('\n').append(summary(all)));
        return text.toString();
    }

    private static String line(String kind, CheckDocument.ProblemEntry problem) {
        return problem.file() + ":" + problem.line() + ": " + kind + problem.what() + "; " + problem.whatToDo() + "\n";
    }

    private static String count(int count, String of) {
        return (count == 0 ? "no" : Integer.toString(count)) + " " + of + (count == 1 ? "" : "s");
    }

    private static String summary(CheckDocument.Summary summary) {
        var sheet = new TextSheet();
        sheet.line(0, "Version " + summary.version() + ", languages " + String.join(", ", summary.languages()));
        sheet.heading("Records");
        sheet.rows(2, summary.counts().stream()
                .map(each -> List.of(each.kind(), Integer.toString(each.count())))
                .toList());
        sheet.heading("Areas");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "features", "explained", "asked", "listed", "addable", "checklist lines"));
        for (CheckDocument.Area area : summary.areas()) {
            rows.add(List.of(
                    area.stop(),
                    Integer.toString(area.features()),
                    Integer.toString(area.explained()),
                    Integer.toString(area.asked()),
                    Integer.toString(area.listed()),
                    Integer.toString(area.addable()),
                    Integer.toString(area.checklistLines())));
        }
        sheet.rows(2, rows);
        translations(sheet, summary.translations());
        legibility(sheet, summary.legibility());
        return sheet.toString();
    }

    private static void translations(TextSheet sheet, List<CheckDocument.TranslationEntry> entries) {
        sheet.heading("Translations");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "current", "stale", "not accepted", "missing"));
        for (CheckDocument.TranslationEntry each : entries) {
            rows.add(List.of(
                    each.language(),
                    Integer.toString(each.current()),
                    Integer.toString(each.stale()),
                    Integer.toString(each.unaccepted()),
                    Integer.toString(each.missing())));
        }
        sheet.rows(2, rows);
    }

    private static void legibility(TextSheet sheet, List<LegibilityEntry> entries) {
        sheet.heading("Reading (grade: Flesch-Kincaid, 8 at most; ease: Szigriszt, 55 at least)");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "", "texts", "words", "words a sentence", "", "", "hardest", ""));
        for (LegibilityEntry each : entries) {
            rows.add(List.of(
                    each.language(),
                    each.kind(),
                    Integer.toString(each.texts()),
                    Integer.toString(each.words()),
                    Double.toString(each.meanSentence()),
                    each.scale(),
                    Double.toString(each.value()),
                    each.hardest(),
                    Double.toString(each.hardestValue())));
        }
        sheet.rows(2, rows);
    }
}
