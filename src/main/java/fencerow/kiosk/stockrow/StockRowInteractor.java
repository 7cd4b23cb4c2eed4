package fencerow.kiosk.stockrow;

import fencerow.desk.Sale;
import fencerow.desk.StockColumn;
import fencerow.desk.StockColumn.Kind;
import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.desk.StockForm;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.stockrow.StockRowModel.Choice;
import fencerow.kiosk.stockrow.StockRowModel.Field;
import fencerow.kiosk.stockrow.StockRowModel.Group;
import fencerow.kiosk.stockrow.StockRowModel.HoldDay;
import fencerow.kiosk.stockrow.StockRowModel.Way;
import fencerow.stock.Catalogue;
import fencerow.terms.Feature;
import fencerow.terms.Stop;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts a unit's row into groups of fields, and says what can stand in each. */
final class StockRowInteractor {
    private static final List<String> MONEY = List.of("asking", "promo", "freight", "setup", "fees");
    private static final List<String> WITH_IT = List.of("bundled", "notes", "picture");
    private static final List<Integer> HOLD_DAYS = List.of(2, 7, 14, 30);

    private final StockDesk desk;
    private final Catalogue catalogue;
    private final Texts texts;
    private final CellWords words;
    private final List<String> pictures;

    /** @param pictures names of the files that are there */
    StockRowInteractor(StockDesk desk, CellWords words, List<String> pictures) {
        this.desk = desk;
        this.catalogue = words.catalogue();
        this.texts = words.phrases().texts();
        this.words = words;
        this.pictures = pictures;
    }

    /** How the unit stands. */
    StockRowModel model(StockEntry entry) {
        StockForm.Reading read = desk.form().read(entry.row());
        List<Group> groups = new ArrayList<>();
        groups.add(group("machine", entry, read, desk.form().columns().stream()
                .filter(column -> column.kind() != Kind.EQUIPMENT && column.kind() != Kind.DOLLARS)
                .filter(column -> !WITH_IT.contains(column.id()))));
        groups.add(group("money", entry, read, named(MONEY)));
        groups.add(group("with-it", entry, read, named(WITH_IT)));
        for (Stop stop : Stop.values()) {
            List<String> here = catalogue.features().stream()
                    .filter(feature -> feature.stop() == stop)
                    .map(feature -> feature.id().value())
                    .toList();
            if (!here.isEmpty()) {
                groups.add(new Group(texts.get("stop." + stop.id()), fields(entry, read, named(here))));
            }
        }
        return new StockRowModel(words.title(read),
                say("about", Map.of("id", entry.row().id().value(), "time", words.time(entry.changed()))),
                words.sale(entry.sale()), ways(entry.sale()),
                read.unit().map(CellWords::unknowns).orElse(0),
                read.unit().isPresent() ? Optional.empty() : Optional.of(say("not-shown", Map.of())), groups);
    }

    private Stream<StockColumn> named(List<String> ids) {
        return ids.stream().flatMap(id -> words.findColumn(id).stream());
    }

    private Group group(String key, StockEntry entry, StockForm.Reading read, Stream<StockColumn> columns) {
        return new Group(say("group." + key, Map.of()), fields(entry, read, columns));
    }

    private List<Field> fields(StockEntry entry, StockForm.Reading read, Stream<StockColumn> columns) {
        return columns
                .map(column -> new Field(column, words.column(column.id()), value(column, entry, read),
                        read.wrong().contains(column.id())))
                .toList();
    }

    /** Where a cell of equipment says nothing, what that comes to. */
    private String value(StockColumn column, StockEntry entry, StockForm.Reading read) {
        if (column.kind() == Kind.EQUIPMENT && entry.row().find(column.id()).isEmpty()) {
            return CellWords.fact(read, column.id())
                    .map(fact -> say("taken-as", Map.of("fact", words.known(fact, column.id()))))
                    .orElseGet(() -> words.value(column, ""));
        }
        return words.value(column, entry.row());
    }

    private static List<Way> ways(Sale sale) {
        if (sale instanceof Sale.Open) {
            return List.of(Way.HOLD, Way.SELL);
        }
        return sale instanceof Sale.Held ? List.of(Way.RELEASE, Way.HOLD, Way.SELL) : List.of(Way.RELEASE);
    }

    /** A field to be changed, with what is written in it now. */
    StockRowModel.Editing editing(StockColumn column, String text, Optional<String> note) {
        return new StockRowModel.Editing(column, words.column(column.id()), text,
                note.orElseGet(() -> words.allowed(column)), choices(column, text));
    }

    private List<Choice> choices(StockColumn column, String text) {
        Set<String> chosen = chosen(text);
        List<String> all = column.kind() == Kind.PICTURE ? pictures : column.choices();
        List<Choice> choices = new ArrayList<>();
        all.forEach(each -> choices.add(new Choice(each, words.value(column, each), chosen.contains(each))));
        if (column.kind() == Kind.EQUIPMENT || column.kind() == Kind.PICTURE) {
            choices.add(new Choice("", words.value(column, ""), text.isBlank()));
        }
        return choices;
    }

    private static Set<String> chosen(String text) {
        return new LinkedHashSet<>(Arrays.stream(text.split("\\s+", -1)).filter(word -> !word.isBlank()).toList());
    }

    /** The words of a cell with one more, or one less. */
    static String toggled(String text, String word) {
        Set<String> all = chosen(text);
        if (!all.remove(word)) {
            all.add(word);
        }
        return String.join(" ", all);
    }

    /** Digits typed after others; none before a nought. */
    static String typed(String text, String digits, StockColumn column) {
        String all = (text.equals("0") ? "" : text) + digits;
        String next = all.startsWith("00") ? "0" : all;
        return next.length() > Integer.toString(column.most()).length() ? text : next;
    }

    /** What is wrong with a field, in words. */
    String wrong(StockColumn column) {
        Optional<Feature> feature = catalogue.features().stream()
                .filter(each -> each.id().value().equals(column.id()))
                .findFirst();
        return say(feature.isPresent() ? "too-many" : "wrong", Map.of("allowed", words.allowed(column)));
    }

    /** Why the next field is asked for. */
    String needed(StockColumn column) {
        return say("needed", Map.of("field", words.column(column.id()), "allowed", words.allowed(column)));
    }

    /** Days until which a unit can be held. */
    List<HoldDay> holdDays() {
        return HOLD_DAYS.stream()
                .map(days -> new HoldDay(desk.today().plusDays(days), say("hold-days", Map.of("count", days))))
                .toList();
    }

    private String say(String key, Map<String, ?> arguments) {
        return texts.get("kiosk.stockrow." + key, arguments);
    }
}
