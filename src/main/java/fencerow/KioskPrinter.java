package fencerow;

import fencerow.backoffice.PrintShop;
import fencerow.desk.Settings.PaperSettings;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.kit.TextSize;
import fencerow.printing.PageFormat;
import fencerow.printing.PrintOutcome;
import fencerow.printing.Printer;
import fencerow.printing.PrinterTrouble;
import fencerow.printing.Printout;
import fencerow.printing.Sheet;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Puts a visit on paper for the kiosk: what the print shop sets, and the showroom's printer. */
final class KioskPrinter implements ListPrinter {
    private final PrintShop shop;
    private final Printer printer;

    /**
     * Prints what the shop sets.
     *
     * @param settings which printer, and where files go where there is none
     * @param data     the folder that the one for files is below, unless that is given from the root
     * @param clock    names the files
     */
    KioskPrinter(PrintShop shop, PaperSettings settings, Path data, Clock clock) {
        this.shop = shop;
        this.printer = Printer.of(settings.printer(), data.resolve(settings.saveFolder()), clock);
    }

    @Override
    public Printed print(Visit visit, Comfort comfort, Set<Part> wanted) {
        PageFormat format = shop.format(comfort.textSize() == TextSize.DOUBLE);
        Printout pages = shop.print(visit, comfort.language(), comfort.metric(), format, sheets(wanted));
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
