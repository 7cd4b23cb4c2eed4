package fencerow.kiosk.stocklist;

import fencerow.desk.Sale;
import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.desk.StockForm;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.frame.Place.StaffUnits;
import fencerow.kiosk.frame.Place.StaffUnits.Which;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToIntFunction;

/** Knows which units there are and which are meant. */
final class StockListInteractor {
    private static final int ON_A_PAGE = 20;

    private final StockDesk desk;
    private final Phrases phrases;
    private final Texts texts;
    private final CellWords words;

    StockListInteractor(StockDesk desk, Phrases phrases, CellWords words) {
        this.desk = desk;
        this.phrases = phrases;
        this.texts = phrases.texts();
        this.words = words;
    }

    /**
     * A unit as the list looks at it.
     *
     * @param words    in small letters, to look for words in
     * @param unknowns how many pieces of equipment nobody has checked
     */
    record Listed(StockEntry entry, String title, String words, String asking, int unknowns) {}

    /** All units. Called in the background. */
    List<Listed> load() {
        return desk.book().entries().stream().map(this::listed).toList();
    }

    private Listed listed(StockEntry entry) {
        StockForm.Reading read = desk.form().read(entry.row());
        String title = words.title(read);
        return new Listed(entry, title, (title + " " + entry.row().id()).toLowerCase(Locale.ROOT),
                read.unit().map(unit -> phrases.money(unit.price().asking())).orElse(""),
                read.unit().map(CellWords::unknowns).orElse(0));
    }

    /** The page meant; the last one where there are fewer. */
    StockListModel page(List<Listed> all, StaffUnits place) {
        List<String> wanted = List.of(place.words().strip().toLowerCase(Locale.ROOT).split("\\s+", -1));
        List<Listed> named = all.stream().filter(each -> wanted.stream().allMatch(each.words()::contains)).toList();
        List<Listed> found = named.stream().filter(each -> is(each, place.which())).toList();
        int last = Math.max(0, (found.size() - 1) / ON_A_PAGE);
        int page = Math.max(0, Math.min(last, place.page()));
        ToIntFunction<Which> count = which -> (int) named.stream().filter(each -> is(each, which)).count();
        return new StockListModel(place.words(),
                Arrays.stream(Which.values())
                        .map(which -> new StockListModel.Chip(which, say("which." + key(which),
                                Map.of("count", count.applyAsInt(which))), which == place.which()))
                        .toList(),
                say("count", Map.of("count", found.size(), "page", page + 1, "pages", last + 1)),
                found.stream().skip((long) page * ON_A_PAGE).limit(ON_A_PAGE).map(this::line).toList(),
                page > 0, page < last);
    }

    private static boolean is(Listed listed, Which which) {
        Sale sale = listed.entry().sale();
        return switch (which) {
            case ALL -> true;
            case OPEN -> sale instanceof Sale.Open;
            case HELD -> sale instanceof Sale.Held;
            case SOLD -> sale instanceof Sale.Sold;
            case UNKNOWNS -> listed.unknowns() > 0 && !(sale instanceof Sale.Sold);
        };
    }

    private StockListModel.Line line(Listed listed) {
        String about = say(listed.unknowns() > 0 ? "about-unknown" : "about", Map.of(
                "id", listed.entry().row().id().value(),
                "sale", words.sale(listed.entry().sale()),
                "count", listed.unknowns()));
        return new StockListModel.Line(listed.entry().row().id(), listed.title(), about, listed.asking());
    }

    private static String key(Which which) {
        return which.name().toLowerCase(Locale.ROOT);
    }

    private String say(String key, Map<String, ?> arguments) {
        return texts.get("kiosk.stocklist." + key, arguments);
    }
}
