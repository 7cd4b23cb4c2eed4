package fencerow.match;

import fencerow.terms.Demand;
import java.util.Arrays;
import java.util.List;

/** Tells the setups of one catalogue apart by what they are made of, which is shorter than the numbers it comes to. */
final class Fingerprint {
    private final long[] numbers;
    private final List<Demand> demands;
    private final int hash;

    private Fingerprint(long[] numbers, List<Demand> demands, int hash) {
        this.numbers = numbers;
        this.demands = demands;
        this.hash = hash;
    }

    /**
     * The fingerprint of a setup.
     *
     * @param rows  for each of its rows the place in the layout
     * @param items for each of its items the place in the layout
     */
    static Fingerprint of(Kind kind, Setup setup, int[] items, int[] rows) {
        Layout layout = kind.layout();
        long[] numbers = new long[3 * (items.length + rows.length)];
        Demand[] demands = new Demand[rows.length];
        int at = 0;
        for (int i = 0; i < items.length; i++) {
            numbers[at++] = layout.place(items[i]);
            numbers[at++] = setup.items().cents()[i];
            numbers[at++] = setup.items().most()[i];
        }
        int hash = 0;
        for (int r = 0; r < rows.length; r++) {
            Setup.Row row = setup.rows().get(r);
            demands[r] = layout.conditions().get(rows[r]).demand();
            numbers[at++] = row.role().compareTo(Setup.Role.MUST);
            numbers[at++] = row.whose();
            numbers[at++] = layout.dependsOnModel(rows[r]) ? kind.asked(rows[r]) : 0;
            hash = 31 * hash + layout.hash(rows[r]);
        }
        return new Fingerprint(numbers, List.of(demands), 31 * hash + Arrays.hashCode(numbers));
    }

    @Override
    public boolean equals(Object other) {
        return other == this
                || other instanceof Fingerprint print
                        && hash == print.hash
                        && Arrays.equals(numbers, print.numbers)
                        && demands.equals(print.demands);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
