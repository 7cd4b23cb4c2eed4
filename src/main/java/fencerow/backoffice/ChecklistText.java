package fencerow.backoffice;

import fencerow.checklist.ChecklistLine;
import fencerow.terms.Stop;
import fencerow.wording.Phrases;
import java.util.List;

/** A shopper's list as plain text. */
final class ChecklistText {
    private ChecklistText() {}

    static String of(List<ChecklistLine> lines, Phrases phrases) {
        var sheet = new TextSheet();
        for (ChecklistLine.Place place : ChecklistLine.Place.values()) {
            List<ChecklistLine> here = lines.stream().filter(line -> line.place() == place).toList();
            if (!here.isEmpty()) {
                sheet.heading(phrases.texts().get("backoffice.checklist." + id(place)));
                for (Stop stop : Stop.values()) {
                    here.stream()
                            .filter(line -> line.template().stop() == stop)
                            .forEach(line -> write(line, phrases, sheet));
                }
            }
        }
        return sheet.toString();
    }

    private static String id(ChecklistLine.Place place) {
        return switch (place) {
            case PAGE_ONE -> "page-one";
            case WALK_AWAY -> "walk-away";
            case FURTHER_SHEET -> "further-sheet";
        };
    }

    private static void write(ChecklistLine line, Phrases phrases, TextSheet sheet) {
        String stop = phrases.texts().get("stop." + line.template().stop().id());
        sheet.line(2, stop + ": " + phrases.labels().lineWhat(line) + " [" + phrases.atStake(line.atStake()) + "]");
        sheet.line(6, phrases.how(line));
        line.because().forEach(because -> sheet.point(6, phrases.because(because)));
    }
}
