package fencerow.kiosk.stockadd;

import fencerow.desk.StockColumn;
import fencerow.desk.StockDesk;
import fencerow.desk.StockRow;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.frame.Place.StaffAdd;
import fencerow.kiosk.stockadd.StockAddModel.Choice;
import fencerow.terms.Money;
import fencerow.terms.UnitId;
import fencerow.wording.Texts;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Knows what is needed of a new unit. */
final class StockAddInteractor {
    private static final int LONGEST_ID = 60;
    private static final int MOST_DIGITS = 7;

    private final StockDesk desk;
    private final CellWords words;
    private final Texts texts;

    StockAddInteractor(StockDesk desk, CellWords words) {
        this.desk = desk;
        this.words = words;
        this.texts = words.phrases().texts();
    }

    /** The id typed, if it can be one. */
    static Optional<UnitId> findId(String typed) {
        try {
            return Optional.of(new UnitId(typed.strip()));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Whether a unit has the id. Called in the background. */
    boolean isTaken(UnitId id) {
        return desk.book().find(id).isPresent();
    }

    StockAddModel model(StaffAdd place, boolean taken) {
        return switch (place.step()) {
            case ID -> id(place.id(), taken);
            case MODEL -> new StockAddModel("", say("model"), choices("model", place.model()),
                    choices("condition", place.condition()), !place.model().isEmpty());
            case PRICE -> new StockAddModel(place.dollars().isEmpty()
                    ? "" : words.phrases().money(Money.ofDollars(Long.parseLong(place.dollars()))), say("price"),
                    List.of(), List.of(), !place.dollars().isEmpty());
        };
    }

    private StockAddModel id(String typed, boolean taken) {
        boolean good = findId(typed).isPresent();
        String note = say(taken ? "id-taken" : good || typed.isEmpty() ? "id" : "id-wrong");
        return new StockAddModel(typed, note, List.of(), List.of(), good && !taken);
    }

    private List<Choice> choices(String column, String chosen) {
        Optional<StockColumn> found = words.findColumn(column);
        return found.map(StockColumn::choices).orElse(List.of()).stream()
                .map(each -> new Choice(each, words.value(found.orElseThrow(), each), each.equals(chosen)))
                .toList();
    }

    /** What was typed, as far as it can be an id by its length. */
    static String bounded(String typed) {
        return typed.substring(0, Math.min(LONGEST_ID, typed.length()));
    }

    static String digits(String typed, String digits) {
        String next = (typed.equals("0") ? "" : typed) + digits;
        return next.length() > MOST_DIGITS || next.startsWith("00") ? typed : next;
    }

    /** The unit as it is to be written: on the lot, with the showroom's own fees. */
    static StockRow row(UnitId id, StaffAdd place) {
        return StockRow.of(id, Map.of("model", place.model(), "condition", place.condition(), "status", "in-stock",
                "asking", place.dollars()));
    }

    private String say(String key) {
        return texts.get("kiosk.stockadd." + key);
    }
}
