package fencerow.kiosk.bookkeeping;

import fencerow.desk.Sale;
import fencerow.desk.StockColumn;
import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.desk.StockForm;
import fencerow.desk.StockRow;
import fencerow.stock.Catalogue;
import fencerow.stock.Model;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.UnitId;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What is written in the stock book, in the words of the screen.
 *
 * @param desk      where it is written
 * @param catalogue of models and equipment
 * @param phrases   of the language
 */
public record CellWords(StockDesk desk, Catalogue catalogue, Phrases phrases) {
    /** How the field that says whether a unit can be bought is called among recorded changes. */
    private static final String SALE = "sale";
    private static final Pattern DIGITS = Pattern.compile("\\d{1,9}");

    private Texts texts() {
        return phrases.texts();
    }

    private String say(String key, Map<String, ?> words) {
        return texts().get("kiosk.book." + key, words);
    }

    /** What a column is called. */
    public String column(String id) {
        return texts().find("kiosk.book.column." + id)
                .or(() -> texts().find("feature." + id + ".name"))
                .orElse(id);
    }

    /** The column, if there is still one of the name. */
    public Optional<StockColumn> findColumn(String id) {
        return desk.form().columns().stream().filter(column -> column.id().equals(id)).findFirst();
    }

    /** What the row says in the column. */
    public String value(StockColumn column, StockRow row) {
        return value(column, row.find(column.id()).orElse(""));
    }

    /** What a cell says. */
    public String value(StockColumn column, String cell) {
        if (cell.isBlank()) {
            return say(column.kind() == StockColumn.Kind.EQUIPMENT ? "as-it-comes" : "blank", Map.of());
        }
        return switch (column.kind()) {
            case CHOICE -> choice(column.id(), cell);
            case DOLLARS -> DIGITS.matcher(cell).matches()
                    ? phrases.money(Money.ofDollars(Long.parseLong(cell)))
                    : cell;
            case WORDS -> phrases.list(Arrays.stream(cell.split("\\s+", -1)).map(this::item).toList());
            case EQUIPMENT -> fact(column.id(), cell);
            case WHOLE, PICTURE -> cell;
        };
    }

    private String choice(String column, String word) {
        return switch (column) {
            case "model" -> catalogue.models().stream()
                    .filter(model -> model.id().value().equals(word))
                    .findFirst()
                    .map(Model::title)
                    .orElse(word);
            case "condition" -> texts().find("condition-of-sale." + word).orElse(word);
            default -> texts().find("kiosk.book." + column + "." + word).orElse(word);
        };
    }

    /** The name of something that comes with a unit or has to be put right. */
    private String item(String word) {
        return catalogue.findItem(new ItemId(word)).isPresent() ? phrases.labels().item(new ItemId(word)) : word;
    }

    private String fact(String feature, String word) {
        if (DIGITS.matcher(word).matches()) {
            return say("fact.count", Map.of("count", Long.parseLong(word)));
        }
        return texts().find("kiosk.book.fact." + word)
                .or(() -> texts().find("feature." + feature + ".kind." + word))
                .orElse(word);
    }

    /** What is known of equipment whose cell says nothing. */
    public String known(Fact fact, String feature) {
        if (fact instanceof Fact.Fitted fitted) {
            return fitted.kind().map(kind -> fact(feature, kind)).orElseGet(() -> fitted.count() > 1
                    ? fact(feature, Integer.toString(fitted.count()))
                    : fact(feature, "yes"));
        }
        return fact(feature, fact instanceof Fact.Absent ? "no" : "unknown");
    }

    /** What can stand in a column, where something else did. */
    public String allowed(StockColumn column) {
        Map<String, Integer> bounds = Map.of("least", column.least(), "most", column.most());
        return texts().find("kiosk.book.allowed." + column.id())
                .orElseGet(() -> say("allowed." + switch (column.kind()) {
                    case CHOICE, WORDS -> "choice";
                    case WHOLE -> "whole";
                    case DOLLARS -> "dollars";
                    case PICTURE -> "picture";
                    case EQUIPMENT -> "equipment";
                }, bounds));
    }

    /** Whether a unit can be bought. */
    public String sale(Sale sale) {
        if (sale instanceof Sale.Held held) {
            return say("sale.held", Map.of("date", date(held.until())));
        }
        return sale instanceof Sale.Sold sold
                ? say("sale.sold", Map.of("date", date(sold.on())))
                : say("sale.open", Map.of());
    }

    private String date(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(texts().locale()).format(day);
    }

    /** A time of the day, here. */
    public String time(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(texts().locale())
                .format(at.atZone(desk.zone()));
    }

    /** What a unit is called to staff: by its machine, or that its row cannot be read. */
    public String title(StockForm.Reading read) {
        return read.unit().map(phrases.labels()::unit).orElseGet(() -> say("unreadable", Map.of()));
    }

    /** The same where only its id is known. */
    public String title(UnitId id) {
        return desk.book().find(id)
                .map(StockEntry::row)
                .map(desk.form()::read)
                .map(this::title)
                .orElseGet(() -> say("removed", Map.of()));
    }

    /** What a recorded change calls the field. */
    public String field(String field) {
        return field.equals(SALE) ? say("column.sale", Map.of()) : column(field);
    }

    /** What stood or stands in a field of a recorded change. */
    public String recorded(String field, String text) {
        if (!field.equals(SALE)) {
            return findColumn(field).map(column -> value(column, text)).orElse(text);
        }
        List<String> words = List.of(text.split(" ", 2));
        Optional<LocalDate> day = words.size() < 2
                ? Optional.empty()
                : Optional.of(words.get(1)).filter(date -> date.matches("\\d{4}-\\d\\d-\\d\\d")).map(LocalDate::parse);
        return switch (words.get(0)) {
            case "held" -> day.map(until -> sale(new Sale.Held(until))).orElse(text);
            case "sold" -> day.map(on -> sale(new Sale.Sold(on))).orElse(text);
            default -> sale(Sale.open());
        };
    }

    /** How many pieces of equipment of a unit nobody has checked. */
    public static int unknowns(Unit unit) {
        return (int) unit.facts().values().stream().filter(Fact.Unverified.class::isInstance).count();
    }

    /** What is known of a feature, if the row can be read. */
    public static Optional<Fact> fact(StockForm.Reading read, String feature) {
        return read.unit().map(unit -> unit.fact(new FeatureId(feature)));
    }
}
