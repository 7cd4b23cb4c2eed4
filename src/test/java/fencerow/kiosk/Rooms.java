package fencerow.kiosk;

import fencerow.backoffice.Finders;
import fencerow.content.Content;
import fencerow.content.ShippedContent;
import fencerow.desk.Settings;
import fencerow.desk.Settings.PaperSettings;
import fencerow.desk.StockDesk;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Premises;
import fencerow.printing.PrintOutcome;
import fencerow.wording.PseudoLocale;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** The demo showroom as the kiosk shows it, in its languages and in the pseudo-locale. */
public final class Rooms {
    /** The PIN of its staff door. */
    public static final String PIN = "2468";
    /** A language in which every word has accents and is some 40 % longer. */
    public static final String PSEUDO = PseudoLocale.LANGUAGE;

    private static final Premises PREMISES = read();

    private Rooms() {}

    /** The demo showroom; lists go nowhere. */
    public static Premises premises() {
        return PREMISES;
    }

    /** The demo showroom with a printer. */
    public static Premises withPrinter(ListPrinter printer) {
        Premises demo = PREMISES;
        Settings set = demo.settings();
        PaperSettings paper = set.paper();
        var printing = new PaperSettings(Optional.of("ipp://printer.invalid/ipp/print"), paper.saveFolder(),
                paper.letter(), paper.pageOne(), paper.signs(), paper.perVisit(), paper.perHour());
        return with(demo, new Settings(set.name(), set.languages(), set.metric(), set.idle(), set.panel(), printing,
                set.pin(), set.comeBackDays()), printer);
    }

    /** A showroom on a panel of another size. */
    static Premises on(double diagonalMetres, Premises room) {
        Settings set = room.settings();
        return with(room, new Settings(set.name(), set.languages(), set.metric(), set.idle(),
                new Settings.Panel(diagonalMetres, set.panel().doubleTouch()), set.paper(), set.pin(),
                set.comeBackDays()), room.printer());
    }

    private static Premises with(Premises room, Settings settings, ListPrinter printer) {
        return new Premises(room.showroom(), room.texts(), room.libraries(), settings, room.search(), printer,
                room.contentVersion(), room.problems(), room.counts(), room.comeBack(), room.desk(),
                room.pictures());
    }

    private static Premises read() {
        Content content = ShippedContent.get().withPseudoLocale();
        return new Premises(content.showroom(), content.texts(), content.libraries(), content.settings(),
                Finders.of(content)::find, new ScriptedPrinter(new PrintOutcome.Printed()),
                content.version(), List.of(), new ScriptedCounts(), Optional.of(new ScriptedComeBack()),
                Optional.of(new StockDesk(MemoryBook.demo(content), content.units().form(),
                        Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC))),
                new ScriptedPictures());
    }
}
