package fencerow.sizing;

import fencerow.terms.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Working load limits of chain, webbing and wire rope where the maker's mark is missing. Unmarked chain counts as grade
 * 30; the maker's mark goes first. Source: {@link Source#CARGO_SECUREMENT}, tables of section 393.108; the 5/16 in row
 * has grade 80 below grade 70, as printed.
 *
 * @param id    such as {@code chain-g70-5-16}
 * @param kind  {@code chain-g70}, {@code webbing} or {@code wire-rope}
 * @param size  in inches, as printed: {@code 5/16}
 * @param limit working load limit
 */
public record WorkingLoadLimit(String id, String kind, String size, Mass limit) {
    private static final List<WorkingLoadLimit> ALL = table();

    /** All rows: chain by grade, webbing, wire rope. */
    public static List<WorkingLoadLimit> all() {
        return ALL;
    }

    /** The row of this kind and size. */
    public static Optional<WorkingLoadLimit> find(String kind, String size) {
        return ALL.stream()
                .filter(row -> row.kind.equals(kind) && row.size.equals(size))
                .findFirst();
    }

    private static List<WorkingLoadLimit> table() {
        List<WorkingLoadLimit> rows = new ArrayList<>();
        String[] sizes = {"1/4", "5/16", "3/8", "7/16", "1/2", "5/8"};
        add(rows, "chain-g30", sizes, 1300, 1900, 2650, 3700, 4500, 6900);
        add(rows, "chain-g43", sizes, 2600, 3900, 5400, 7200, 9200, 13_000);
        add(rows, "chain-g70", sizes, 3150, 4700, 6600, 8750, 11_300, 15_800);
        String[] noSevenSixteenths = {"1/4", "5/16", "3/8", "1/2", "5/8"};
        add(rows, "chain-g80", noSevenSixteenths, 3500, 4500, 7100, 12_000, 18_100);
        add(rows, "chain-g100", noSevenSixteenths, 4300, 5700, 8800, 15_000, 22_600);
        add(rows, "webbing", new String[] {"1-3/4", "2", "3", "4"}, 1750, 2000, 3000, 4000);
        add(rows, "wire-rope", sizes, 1400, 2100, 3000, 4100, 5300, 8300);
        return List.copyOf(rows);
    }

    private static void add(List<WorkingLoadLimit> rows, String kind, String[] sizes, int... pounds) {
        for (int i = 0; i < sizes.length; i++) {
            String id = kind + "-" + sizes[i].replace('/', '-');
            rows.add(new WorkingLoadLimit(id, kind, sizes[i], Mass.ofPounds(pounds[i])));
        }
    }
}
