package fencerow;

import fencerow.content.Content;
import fencerow.desk.Settings.PaperSettings;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.kit.TextSize;
import fencerow.printing.Handout;
import fencerow.printing.Handouts;
import fencerow.printing.PageFormat;
import fencerow.printing.Paper;
import fencerow.printing.PrintOutcome;
import fencerow.printing.Printer;
import fencerow.printing.PrinterTrouble;
import fencerow.printing.Printout;
import fencerow.printing.Sheet;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;

/** Puts a visit on paper for the kiosk: the showroom's templates, words and printer. */
final class KioskPrinter implements ListPrinter {
    private static final System.Logger LOG = System.getLogger(KioskPrinter.class.getName());

    private final Content content;
    private final Clock clock;
    private final Printer printer;
    private final CompletableFuture<Paper> paper;

    /**
     * Starts to read the templates and to warm up in the background.
     *
     * @param config the configuration's folder, with the templates in {@code paper}
     */
    KioskPrinter(Content content, Path config, Clock clock) {
        this.content = content;
        this.clock = clock;
        PaperSettings settings = content.settings().paper();
        this.printer = Printer.of(settings.printer(), Path.of(settings.saveFolder()), clock);
        this.paper = CompletableFuture.supplyAsync(() -> Paper.of(
                config.resolve("paper"),
                settings.pageOne(),
                settings.signs(),
                warning -> LOG.log(System.Logger.Level.WARNING, "The paper's templates: {0}", warning)));
    }

    @Override
    public Printed print(Visit visit, Comfort comfort, Set<Part> wanted) {
        Texts texts = content.getTexts(comfort.language());
        var quantities = new Quantities(texts.locale(), comfort.metric());
        var phrases = new Phrases(texts, quantities::show);
        var imprint = new Handout.Imprint(
                content.settings().name(), content.settings().isDemo(), LocalDate.now(clock), content.version());
        Handout handout = new Handouts(
                        content.showroom(), phrases, content.getLibrary(comfort.language()), imprint)
                .of(visit);
        var size = content.settings().paper().letter() ? PageFormat.Size.LETTER : PageFormat.Size.A4;
        var format = new PageFormat(size, comfort.textSize() == TextSize.DOUBLE);
        Printout pages = paper.join().print(handout, phrases, format, sheets(wanted));
        return printed(printer.print(pages, format, 1), pages);
    }

    private static List<Sheet> sheets(Set<Part> wanted) {
        List<Sheet> sheets = new ArrayList<>();
        if (wanted.contains(Part.LIST)) {
            sheets.add(Sheet.LIST);
            sheets.add(Sheet.COMPARISON);
        }
        if (wanted.contains(Part.FURTHER_SHEET)) {
            sheets.add(Sheet.FURTHER_LINES);
            sheets.add(Sheet.QUESTIONS);
            sheets.add(Sheet.HAULING);
        }
        return sheets;
    }

    private static Printed printed(PrintOutcome outcome, Printout pages) {
        if (outcome instanceof PrintOutcome.Saved saved) {
            return new Printed.Saved(saved.file().getFileName().toString(), pages.pages());
        }
        if (outcome instanceof PrintOutcome.Failed failed) {
            return new Printed.NotNow(reason(failed.trouble()));
        }
        if (outcome instanceof PrintOutcome.NotSaved || outcome instanceof PrintOutcome.TooMany) {
            return new Printed.NotNow(Reason.REFUSED);
        }
        return new Printed.OnPaper(pages.pages());
    }

    private static Reason reason(PrinterTrouble trouble) {
        return switch (trouble) {
            case JAM, COVER_OPEN, OUT_OF_PAPER, TRAY_MISSING, OUTPUT_FULL, LOW_ON_PAPER -> Reason.PAPER;
            case OFFLINE, NOT_FOUND -> Reason.SILENT;
            case WRONG_FORMAT, NOT_ACCEPTING, REFUSED, CANCELLED, OUT_OF_INK, PAUSED, TROUBLE, LOW_ON_INK ->
                Reason.REFUSED;
        };
    }
}
