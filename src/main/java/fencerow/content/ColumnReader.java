package fencerow.content;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads {@code columns.yaml}: how stock lists from elsewhere may call the columns. */
final class ColumnReader {
    private final Set<String> columns;

    ColumnReader(List<String> columns, Collection<String> equipment) {
        this.columns = new HashSet<>(columns);
        this.columns.addAll(equipment);
        this.columns.add(UnitReader.PICTURE);
    }

    /** The column that each name means. */
    Map<String, String> read(YamlNode top) {
        Map<String, String> meant = new LinkedHashMap<>();
        for (YamlNode.Entry entry : top.entries()) {
            if (!columns.contains(entry.key())) {
                entry.value().error("there is no column [" + entry.key() + "]",
                        Nearest.advice(entry.key(), columns, "use a column of the stock list"));
                continue;
            }
            for (YamlNode name : entry.value().list()) {
                String before = meant.put(name.text(), entry.key());
                if (before != null) {
                    name.error("[" + name.text() + "] already means [" + before + "]", "delete one of them");
                }
            }
        }
        return meant;
    }
}
