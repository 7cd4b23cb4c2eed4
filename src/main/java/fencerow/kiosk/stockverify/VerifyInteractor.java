package fencerow.kiosk.stockverify;

import fencerow.desk.StockColumn;
import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.desk.StockForm;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Stop;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Knows what is to be checked on a unit, and what can be answered. */
final class VerifyInteractor {
    private final StockDesk desk;
    private final CellWords words;
    private final Texts texts;

    VerifyInteractor(StockDesk desk, CellWords words) {
        this.desk = desk;
        this.words = words;
        this.texts = words.phrases().texts();
    }

    /** Columns of equipment that nobody has checked. */
    List<String> unknown(StockEntry entry) {
        StockForm.Reading read = desk.form().read(entry.row());
        return words.catalogue().features().stream()
                .map(feature -> feature.id().value())
                .filter(id -> CellWords.fact(read, id).filter(Fact.Unverified.class::isInstance).isPresent())
                .toList();
    }

    /**
     * The list.
     *
     * @param asked columns that were unknown when the walk began; answered ones stay, to be put right
     * @param wrong columns whose last answer was not kept
     */
    VerifyModel model(StockEntry entry, List<String> asked, Set<String> wrong) {
        int left = unknown(entry).size();
        List<VerifyModel.Stop> stops = new ArrayList<>();
        for (Stop stop : Stop.values()) {
            List<VerifyModel.Check> here = words.catalogue().features().stream()
                    .filter(feature -> feature.stop() == stop && asked.contains(feature.id().value()))
                    .map(feature -> check(feature, entry, wrong))
                    .toList();
            if (!here.isEmpty()) {
                stops.add(new VerifyModel.Stop(texts.get("stop." + stop.id()), here));
            }
        }
        return new VerifyModel(words.title(desk.form().read(entry.row())),
                texts.get("kiosk.stockverify.left", Map.of("count", left)), stops);
    }

    private VerifyModel.Check check(Feature feature, StockEntry entry, Set<String> wrong) {
        String id = feature.id().value();
        String written = entry.row().find(id).orElse("");
        List<VerifyModel.Answer> answers = words.findColumn(id).map(StockColumn::choices).orElse(List.of()).stream()
                .filter(text -> fits(feature, text, entry))
                .map(text -> new VerifyModel.Answer(text, say(id, text), text.equals(written)))
                .toList();
        return new VerifyModel.Check(id, words.column(id), texts.get("feature." + id + ".check"), answers,
                wrong.contains(id) ? texts.get("kiosk.stockverify.wrong") : "");
    }

    /** No more of it than the model takes. */
    private boolean fits(Feature feature, String text, StockEntry entry) {
        boolean isCount = feature.most() > 1 && Character.isDigit(text.charAt(0));
        return !isCount || desk.form().read(entry.row()).unit()
                .map(unit -> unit.model().limits().getOrDefault(new FeatureId(feature.id().value()), feature.most()))
                .filter(limit -> Integer.parseInt(text) > limit)
                .isEmpty();
    }

    private String say(String column, String text) {
        return Arrays.asList("yes", "no", "unknown").contains(text)
                ? texts.get("kiosk.stockverify.answer." + text)
                : words.findColumn(column).map(each -> words.value(each, text)).orElse(text);
    }
}
