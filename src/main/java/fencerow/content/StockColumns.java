package fencerow.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds out which of our columns is meant by each in the first row of a list from elsewhere. */
final class StockColumns {
    private final Map<String, String> meant = new HashMap<>();
    private final List<String> known;

    /**
     * Takes all names a column can have. Where two columns could be meant, the earlier of these counts: what people
     * said they mean, our own names, names from {@code columns.yaml}, names of equipment as shown.
     *
     * @param told   what people said they mean by a column, now or on another day; blank for one to leave out
     * @param titles names of equipment as shown, and its columns
     */
    StockColumns(UnitReader reader, Map<String, String> told, Map<String, String> titles) {
        this.known = reader.columns();
        told.forEach(this::add);
        known.forEach(column -> add(column, column));
        reader.synonyms().forEach(this::add);
        titles.forEach(this::add);
    }

    private void add(String name, String column) {
        meant.putIfAbsent(plain(name), column);
    }

    /** Letters and digits alone: case, blanks and signs do not tell names apart. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
    }

    /**
     * The column for each cell of the first row; blank for one that is left out.
     *
     * @return as many as there are cells; empty where something is wrong, which is told
     */
    Optional<List<String>> match(TableRows.Line head, String file, Problems problems) {
        var place = new Place(file, head.number());
        int before = problems.count();
        Set<String> seen = new HashSet<>();
        List<String> columns = new ArrayList<>();
        for (String name : head.cells()) {
            String column = name.isBlank() ? "" : meant.getOrDefault(plain(name), name);
            if (!column.isEmpty() && !known.contains(column)) {
                problems.error(place, "the column [" + name + "] is not known", Nearest.advice(plain(name), known,
                        "say which one is meant") + " Give --column \"" + name + "=COLUMN\", or nothing after the"
                        + " equals sign to leave it out");
            } else if (!column.isEmpty() && !seen.add(column)) {
                problems.error(place, "two columns mean [" + column + "]", "delete one, or leave it out by --column \""
                        + name + "=\"");
            }
            columns.add(column);
        }
        if (!seen.contains("id")) {
            problems.error(place, "no column holds the units' ids", "name one [id], or give --column \"NAME=id\"");
        }
        return problems.count() == before ? Optional.of(columns) : Optional.empty();
    }

    /** What each cell of the first row was taken to mean, where that is not its own name. */
    static Map<String, String> understood(TableRows.Line head, List<String> columns) {
        Map<String, String> understood = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!head.cells().get(i).isBlank() && !head.cells().get(i).equals(columns.get(i))) {
                understood.put(head.cells().get(i), columns.get(i));
            }
        }
        return understood;
    }
}
