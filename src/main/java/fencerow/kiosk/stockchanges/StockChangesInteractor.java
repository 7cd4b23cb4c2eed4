package fencerow.kiosk.stockchanges;

import fencerow.desk.Edit;
import fencerow.desk.StockDesk;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.terms.UnitId;
import fencerow.wording.Texts;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts recorded changes into words. */
final class StockChangesInteractor {
    private static final int MOST = 60;

    private final StockDesk desk;
    private final CellWords words;
    private final Texts texts;

    StockChangesInteractor(StockDesk desk, CellWords words) {
        this.desk = desk;
        this.words = words;
        this.texts = words.phrases().texts();
    }

    /** Called in the background. */
    StockChangesModel newest() {
        Map<UnitId, String> titles = new HashMap<>();
        List<StockChangesModel.Line> lines = desk.book().changes(MOST).stream()
                .map(change -> line(change, titles.computeIfAbsent(change.unit(), words::title)))
                .toList();
        return new StockChangesModel(lines);
    }

    private StockChangesModel.Line line(Edit.Recorded change, String title) {
        return new StockChangesModel.Line(
                say("unit", Map.of("title", title, "id", change.unit().value())),
                say("by." + change.origin().id(), Map.of("time", words.time(change.at()))),
                say("change", Map.of(
                        "field", words.field(change.field()),
                        "before", text(change.field(), change.before()),
                        "after", text(change.field(), change.after()))));
    }

    private String text(String field, String text) {
        return text.isBlank() ? texts.get("kiosk.book.blank") : words.recorded(field, text);
    }

    private String say(String key, Map<String, ?> arguments) {
        return texts.get("kiosk.stockchanges." + key, arguments);
    }
}
