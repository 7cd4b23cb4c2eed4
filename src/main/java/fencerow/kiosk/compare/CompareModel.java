package fencerow.kiosk.compare;

import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.matching.UnitCard;
import java.util.List;
import java.util.Optional;

/**
 * Units beside each other.
 *
 * @param heads  the units
 * @param groups what differs, by what it is about
 * @param same   what is the same on all of them
 */
public record CompareModel(List<UnitCard> heads, List<Group> groups, List<Row> same) {
    /** Copies the lists. */
    public CompareModel {
        heads = List.copyOf(heads);
        groups = List.copyOf(groups);
        same = List.copyOf(same);
    }

    /** Rows about one thing. */
    public record Group(String name, List<Row> rows) {
        /** Copies the list. */
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One thing on all of them.
     *
     * @param difference between two of them in words, where that is a sum of money
     * @param cells      one for each unit
     */
    public record Row(String name, Optional<String> difference, List<Cell> cells) {
        /** Copies the list. */
        public Row {
            cells = List.copyOf(cells);
        }

        /** Whether it is the same on all. */
        boolean isSame() {
            return cells.stream().distinct().count() <= 1;
        }
    }

    /** How the thing stands on one unit. */
    public record Cell(Optional<Sign.Kind> sign, String words) {}
}
