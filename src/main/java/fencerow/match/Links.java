package fencerow.match;

import java.util.ArrayList;
import java.util.List;

/**
 * Where each item of a setup stands in its rows.
 *
 * @param needs  for each item the rows that it needs
 * @param lowers for each item the rows from whose headroom it may take
 */
record Links(int[][] needs, int[][] lowers) {
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
            if (row.owner() >= 0) {
                needs.get(row.owner()).add(r);
            }
            for (int k = 0; k < row.change().size(); k++) {
                if (row.change().amounts()[k] < 0) {
                    lowers.get(row.change().places()[k]).add(r);
                }
            }
        }
        return new Links(arrays(needs), arrays(lowers));
    }

    private static int[][] arrays(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
