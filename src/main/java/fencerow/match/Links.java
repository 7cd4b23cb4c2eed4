package fencerow.match;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where each item of a setup stands in its rows.
 *
 * @param needs  for each item the rows that it needs
 * @param lowers for each item the rows from whose headroom it may take
 * @param owned  the rows that are some item's need
 * @param musts  the rows that are must-haves
 * @param limits the rows that are limits
 */
record Links(int[][] needs, int[][] lowers, int[] owned, int[] musts, int[] limits) {
    /** The links of rows over so many items. */
    static Links of(int items, List<Setup.Row> rows) {
        List<List<Integer>> needs = new ArrayList<>();
        List<List<Integer>> lowers = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            needs.add(new ArrayList<>());
            lowers.add(new ArrayList<>());
        }
        for (int r = 0; r < rows.size(); r++) {
            Setup.Row row = rows.get(r);
            if (row.isNeed()) {
                needs.get(row.whose()).add(r);
            }
            for (int k = 0; k < row.change().size(); k++) {
                if (row.change().amounts()[k] < 0) {
                    lowers.get(row.change().places()[k]).add(r);
                }
            }
        }
        return new Links(
                arrays(needs),
                arrays(lowers),
                inRole(Setup.Role.NEED, rows),
                inRole(Setup.Role.MUST, rows),
                inRole(Setup.Role.LIMIT, rows));
    }

    private static int[] inRole(Setup.Role role, List<Setup.Row> rows) {
        return IntStream.range(0, rows.size())
                .filter(r -> rows.get(r).role() == role)
                .toArray();
    }

    private static int[][] arrays(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
