package fencerow.kiosk.print;

import fencerow.checklist.ChecklistLine;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Outlook;
import fencerow.visit.Showroom;
import fencerow.wording.Labels;
import fencerow.wording.Texts;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts the states of printing into words. */
final class PrintInteractor {
    private final Showroom showroom;
    private final Texts texts;

    PrintInteractor(Showroom showroom, Texts texts) {
        this.showroom = showroom;
        this.texts = texts;
    }

    /** What page one will hold. */
    List<String> lines(Outlook outlook) {
        Labels labels = new Labels(texts);
        return showroom.checklist(outlook.visit(), outlook.stakes()).stream()
                .filter(line -> line.place() == ChecklistLine.Place.PAGE_ONE)
                .map(labels::lineWhat)
                .toList();
    }

    PrintModel.Ready ready(boolean further, boolean saves, List<String> lines) {
        return new PrintModel.Ready(further, saves, texts.get("paper.title"), lines);
    }

    static Set<ListPrinter.Part> parts(boolean further) {
        return further ? EnumSet.allOf(ListPrinter.Part.class) : EnumSet.of(ListPrinter.Part.LIST);
    }

    PrintModel.Working working(boolean saves) {
        return new PrintModel.Working(say(saves ? "saving" : "printing", Map.of()));
    }

    PrintModel printed(ListPrinter.Printed printed) {
        if (printed instanceof ListPrinter.Printed.OnPaper paper) {
            return new PrintModel.Done(say("on-paper", Map.of("pages", paper.pages())), say("take-it", Map.of()));
        }
        if (printed instanceof ListPrinter.Printed.Saved saved) {
            return new PrintModel.Done(say("saved", Map.of("pages", saved.pages())),
                    say("ask-for-it", Map.of("name", saved.fileName())));
        }
        ListPrinter.Printed.NotNow notNow = (ListPrinter.Printed.NotNow) printed;
        return failed(notNow.reason().id());
    }

    /** Something went wrong that the printer did not tell of. */
    PrintModel.Failed broken() {
        return failed("broken");
    }

    private PrintModel.Failed failed(String reason) {
        return new PrintModel.Failed(say("not-now." + reason, Map.of()), say("way-out", Map.of()));
    }

    private String say(String key, Map<String, ?> words) {
        return texts.get("kiosk.print." + key, words);
    }
}
