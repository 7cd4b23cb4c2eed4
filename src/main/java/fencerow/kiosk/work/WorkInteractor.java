package fencerow.kiosk.work;

import fencerow.kiosk.frame.Place;
import fencerow.sizing.catalogue.Topic;
import fencerow.visit.Workbook;
import fencerow.visit.Worksheet;
import fencerow.wording.SizingWords;
import java.util.List;
import java.util.Optional;

/** Knows which calculations there are. */
final class WorkInteractor {
    private final Workbook workbook;
    private final SizingWords words;

    WorkInteractor(Workbook workbook, SizingWords words) {
        this.workbook = workbook;
        this.words = words;
    }

    /** The open area's calculations; the first area's where none is named or the named one has none. */
    WorkModel model(Optional<Topic> named) {
        List<Topic> areas = workbook.areas();
        Optional<Topic> open = named.filter(areas::contains).or(() -> areas.stream().findFirst());
        return new WorkModel(
                words.texts().get("kiosk.work.lead"),
                areas.stream()
                        .map(area -> new WorkModel.Area(words.area(area), open.equals(Optional.of(area)),
                                new Place.Work(Optional.of(area), 0)))
                        .toList(),
                open.stream().flatMap(area -> workbook.of(area).stream()).map(this::card).toList());
    }

    private WorkModel.Card card(Worksheet sheet) {
        String gives = sheet.answerOutput()
                .map(output -> words.result(sheet.calculation(), output))
                .orElse("");
        return new WorkModel.Card(words.ask(sheet.calculation()), gives, Place.Worksheet.of(sheet.id()));
    }
}
