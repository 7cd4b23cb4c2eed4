package fencerow.content;

import fencerow.desk.StockForm;
import fencerow.desk.StockRow;
import fencerow.stock.AskingPrice;
import fencerow.stock.Availability;
import fencerow.stock.Condition;
import fencerow.stock.Model;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.Offering;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Works out what a row of a stock list comes to against the content: the unit, or what is wrong in which column. Needs
 * no state of its own; may be used from any thread once all content is read.
 */
public final class UnitReader {
    /** Columns besides the equipment's, in the order in which they are written. */
    static final List<String> COLUMNS = List.of("id", "model", "condition", "year", "hours", "status",
            "lead-days", "asking", "promo", "freight", "setup", "fees", "bundled", "notes");
    /** The column that names a picture's file. */
    static final String PICTURE = "picture";

    private static final Pattern PICTURE_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,80}\\.(png|jpg|jpeg)");
    static final int FIRST_YEAR = 1950;
    static final int LAST_YEAR = 2100;
    static final int MOST_HOURS = 50_000;
    static final int MOST_DAYS = 1_000;

    private final Ids ids;
    private final Map<String, Feature> features;
    private final Map<String, ModelReader.Made> models;
    private final Fees usual;
    private final Map<String, String> synonyms;

    UnitReader(Ids ids, Map<String, Feature> features, Map<String, ModelReader.Made> models, Fees usual,
            Map<String, String> synonyms) {
        this.ids = ids;
        this.features = features;
        this.models = models;
        this.usual = usual;
        this.synonyms = Map.copyOf(synonyms);
    }

    /** Price lines of a unit whose row leaves them empty. */
    record Fees(Money freight, Money setup, Money paperwork) {
        static final Fees NONE = new Fees(Money.ZERO, Money.ZERO, Money.ZERO);
    }

    /**
     * The units of a stock book, and what is wrong with rows that are none any more.
     *
     * @param units    those that can be shown
     * @param problems with the others
     */
    public record Booked(List<Unit> units, List<Problem> problems) {
        /** Copies the lists. */
        public Booked {
            units = List.copyOf(units);
            problems = List.copyOf(problems);
        }
    }

    /** Works out what the rows of a stock book come to; one that cannot be read leaves the others as they are. */
    public Booked read(List<StockRow> rows) {
        List<Unit> units = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (StockRow row : rows) {
            var told = new Problems();
            read(row, new Place("stock book, unit " + row.id(), 1), told).ifPresent(units::add);
            problems.addAll(told.errors());
        }
        return new Booked(units, problems);
    }

    /** One row; what is wrong with it is told. */
    Optional<Unit> read(StockRow row, Place place, Problems problems) {
        Map<String, String> cells = new HashMap<>(row.cells());
        cells.put("id", row.id().value());
        return read(new CsvRow(place, cells, problems));
    }

    /** What is wrong with one cell alone; empty if it can be written. Rules across cells are not looked at. */
    public Optional<Problem> check(StockRow row) {
        var told = new Problems();
        read(row, new Place("unit " + row.id(), 1), told);
        return told.errors().stream().findFirst();
    }

    /** Whether the column is one of equipment. */
    public boolean isEquipment(String column) {
        return features.containsKey(column);
    }

    /** What can be written of a unit, for a screen on which it is. */
    public StockForm form() {
        return new UnitForm(this, ids, features.values());
    }

    /** Every column, in the order in which they are written. */
    public List<String> columns() {
        List<String> all = new ArrayList<>(COLUMNS);
        all.add(PICTURE);
        all.addAll(features.keySet());
        return all;
    }

    /** How lists from elsewhere may call the columns, as they write it. */
    Map<String, String> synonyms() {
        return synonyms;
    }

    /** One row; its id must be that of no other. */
    Optional<Unit> read(CsvRow row) {
        int before = row.problems().count();
        String id = row.text("id");
        String modelId = row.text("model");
        if (!ids.require(modelId, row.place(), row.problems(), Kind.MODEL)) {
            row.problems().isIn("model");
        }
        Condition condition = row.choice("condition", Condition.values(), Condition::id);
        OptionalInt year = row.findWhole("year", FIRST_YEAR, LAST_YEAR);
        OptionalInt hours = row.findWhole("hours", 0, MOST_HOURS);
        Availability status = row.choice("status", Availability.values(), Availability::id);
        int leadDays = row.findWhole("lead-days", 0, MOST_DAYS).orElse(0);
        if (status != Availability.IN_STOCK && row.find("lead-days").isEmpty()) {
            row.error("lead-days", "the cell is empty", "say in how many days the machine can be here");
        }
        AskingPrice price = price(row);
        Set<ItemId> bundled = Set.copyOf(items(row, "bundled", Kind.ATTACHMENT, Kind.ADD_ON));
        List<ItemId> notes = items(row, "notes", Kind.CONDITION);
        row.find(PICTURE).filter(name -> !PICTURE_NAME.matcher(name).matches()).ifPresent(name -> row.error(PICTURE,
                "[" + name + "] is no picture's file name", "write letters, digits and hyphens, then .png or .jpg;"
                        + " no folder"));
        Optional<ModelReader.Made> made = Optional.ofNullable(models.get(modelId));
        if (made.isEmpty()) {
            return Optional.empty();
        }
        Model model = made.get().model();
        checkAge(row, made.get(), condition, year, hours);
        Map<FeatureId, Fact> facts = facts(row, model, condition);
        return row.problems().make(row.place(), before, () -> new Unit(new UnitId(id), model, condition, year, hours,
                status, leadDays, price, facts, bundled, notes));
    }

    private AskingPrice price(CsvRow row) {
        row.text("asking");
        return new AskingPrice(
                row.findDollars("asking").orElse(Money.ZERO),
                row.findDollars("promo"),
                row.findDollars("freight").orElse(usual.freight()),
                row.findDollars("setup").orElse(usual.setup()),
                row.findDollars("fees").orElse(usual.paperwork()));
    }

    private List<ItemId> items(CsvRow row, String column, Kind... kinds) {
        List<ItemId> items = new ArrayList<>();
        for (String word : row.words(column)) {
            if (ids.require(word, row.place(), row.problems(), kinds)) {
                var item = new ItemId(word);
                if (items.contains(item)) {
                    row.error(column, "[" + word + "] stands here twice", "delete one of them");
                } else {
                    items.add(item);
                }
            } else {
                row.problems().isIn(column);
            }
        }
        return items;
    }

    private static void checkAge(
            CsvRow row, ModelReader.Made made, Condition condition, OptionalInt year, OptionalInt hours) {
        if (year.isPresent() && !made.years().hold(year.getAsInt())) {
            row.warning("year", "[" + made.model().id() + "] was not made in " + year.getAsInt(),
                    "check the year and the model's years");
        }
        if (condition == Condition.USED && hours.isEmpty()) {
            row.warning("hours", "a used machine without its hours", "read the hour meter");
        }
    }

    private Map<FeatureId, Fact> facts(CsvRow row, Model model, Condition condition) {
        Map<FeatureId, Fact> facts = new HashMap<>();
        for (Feature feature : features.values()) {
            String column = feature.id().value();
            Optional<String> cell = row.find(column);
            if (cell.isEmpty()) {
                facts.put(feature.id(), condition == Condition.NEW
                        ? FactReader.asItComes(model, feature)
                        : FactReader.unseen(model, feature));
            } else {
                Optional<Fact> fact = FactReader.read(feature, cell.get());
                if (fact.isEmpty()) {
                    row.error(column, "[" + cell.get() + "] is not understood",
                            "write one of " + FactReader.allowed(feature) + ", or leave it empty");
                }
                facts.put(feature.id(), fact.orElse(Fact.absent()));
                fact.ifPresent(it -> checkPossible(row, model, feature, it));
            }
        }
        return facts;
    }

    private static void checkPossible(CsvRow row, Model model, Feature feature, Fact fact) {
        String column = feature.id().value();
        if (!(fact instanceof Fact.Absent) && model.offeringOf(feature) == Offering.NEVER) {
            row.warning(column, "[" + model.id() + "] can never have it", "check the cell, or the model's offering");
        }
        Optional<Integer> limit = Optional.ofNullable(model.limits().get(feature.id()));
        if (fact instanceof Fact.Fitted fitted && limit.isPresent() && fitted.count() > limit.get()) {
            row.error(column, fitted.count() + " are fitted, and [" + model.id() + "] takes at most " + limit.get(),
                    "check the cell, or the model's limits");
        }
    }
}
