package fencerow.kiosk.list;

import fencerow.checklist.ChecklistLine;
import fencerow.kiosk.frame.Outlook;
import fencerow.terms.Stop;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Labels;
import fencerow.wording.Phrases;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Composes the list and puts it into words. */
final class ListInteractor {
    private final Showroom showroom;
    private final Phrases phrases;
    private final Labels labels;

    ListInteractor(Showroom showroom, Phrases phrases) {
        this.showroom = showroom;
        this.phrases = phrases;
        this.labels = phrases.labels();
    }

    ListModel model(Outlook outlook) {
        Visit visit = outlook.visit();
        List<ChecklistLine> kept = showroom.checklist(visit, outlook.stakes());
        String work = phrases.work(outlook.needs());
        return new ListModel(
                work.isEmpty()
                        ? phrases.texts().get("kiosk.list.for-everyone")
                        : phrases.texts().get("kiosk.list.for-work", Map.of("work", work)),
                stops(kept), walkAway(kept),
                whats(kept, line -> line.place() == ChecklistLine.Place.FURTHER_SHEET), struck(visit, outlook));
    }

    private List<ListModel.StopPart> stops(List<ChecklistLine> kept) {
        List<ListModel.StopPart> parts = new ArrayList<>();
        for (Stop stop : Stop.values()) {
            List<ListModel.Line> lines = kept.stream()
                    .filter(line -> line.place() == ChecklistLine.Place.PAGE_ONE && line.template().stop() == stop)
                    .map(this::line)
                    .toList();
            if (!lines.isEmpty()) {
                parts.add(new ListModel.StopPart(phrases.texts().get("stop." + stop.id()), lines));
            }
        }
        return parts;
    }

    private ListModel.Line line(ChecklistLine line) {
        return new ListModel.Line(line.id(), labels.lineWhat(line), phrases.how(line),
                line.because().stream().map(phrases::because).distinct().toList(), phrases.atStake(line.atStake()));
    }

    private List<ListModel.Sign> walkAway(List<ChecklistLine> kept) {
        return kept.stream()
                .filter(line -> line.place() == ChecklistLine.Place.WALK_AWAY)
                .map(line -> new ListModel.Sign(labels.lineWhat(line), labels.lineBad(line)))
                .toList();
    }

    private List<String> whats(List<ChecklistLine> lines, Predicate<ChecklistLine> which) {
        return lines.stream().filter(which).map(labels::lineWhat).toList();
    }

    /** Lines that would be on the list if nothing were struck out, and are. */
    private List<ListModel.Struck> struck(Visit visit, Outlook outlook) {
        Visit whole = visit;
        Set<String> out = new HashSet<>(visit.leftOut());
        for (String id : out) {
            whole = whole.toggleLine(id);
        }
        return showroom.checklist(whole, outlook.stakes()).stream()
                .filter(line -> out.contains(line.id()))
                .map(line -> new ListModel.Struck(line.id(), labels.lineWhat(line)))
                .toList();
    }
}
