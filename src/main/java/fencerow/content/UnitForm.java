package fencerow.content;

import fencerow.desk.StockColumn;
import fencerow.desk.StockColumn.Kind;
import fencerow.desk.StockForm;
import fencerow.desk.StockRow;
import fencerow.stock.Availability;
import fencerow.stock.Condition;
import fencerow.stock.Unit;
import fencerow.terms.Feature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the reader of stock lists takes, told beforehand. */
final class UnitForm implements StockForm {
    private static final int LONGEST_NAME = 86;

    private final UnitReader reader;
    private final List<StockColumn> columns;

    UnitForm(UnitReader reader, Ids ids, Collection<Feature> features) {
        this.reader = reader;
        List<StockColumn> all = new ArrayList<>(List.of(
                StockColumn.of("model", Kind.CHOICE, List.copyOf(ids.all(fencerow.content.Kind.MODEL))),
                StockColumn.of("condition", Kind.CHOICE,
                        Arrays.stream(Condition.values()).map(Condition::id).toList()),
                StockColumn.of("year", Kind.WHOLE, UnitReader.FIRST_YEAR, UnitReader.LAST_YEAR),
                StockColumn.of("hours", Kind.WHOLE, 0, UnitReader.MOST_HOURS),
                StockColumn.of("status", Kind.CHOICE,
                        Arrays.stream(Availability.values()).map(Availability::id).toList()),
                StockColumn.of("lead-days", Kind.WHOLE, 0, UnitReader.MOST_DAYS)));
        Stream.of("asking", "promo", "freight", "setup", "fees")
                .forEach(price -> all.add(StockColumn.of(price, Kind.DOLLARS, 0, CsvRow.MOST_DOLLARS)));
        all.add(StockColumn.of("bundled", Kind.WORDS, Stream.concat(
                ids.all(fencerow.content.Kind.ATTACHMENT).stream(),
                ids.all(fencerow.content.Kind.ADD_ON).stream()).toList()));
        all.add(StockColumn.of("notes", Kind.WORDS, List.copyOf(ids.all(fencerow.content.Kind.CONDITION))));
        all.add(StockColumn.of(UnitReader.PICTURE, Kind.PICTURE, 0, LONGEST_NAME));
        features.forEach(feature -> all.add(
                StockColumn.of(feature.id().value(), Kind.EQUIPMENT, FactReader.choices(feature))));
        this.columns = List.copyOf(all);
    }

    @Override
    public List<StockColumn> columns() {
        return columns;
    }

    @Override
    public Reading read(StockRow row) {
        var told = new Problems();
        Optional<Unit> unit = reader.read(row, new Place("unit " + row.id(), 1), told);
        return new Reading(unit, told.columns());
    }
}
