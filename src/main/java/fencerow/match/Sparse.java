package fencerow.match;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/**
 * Numbers at a few places, nothing at all others.
 *
 * @param places  rising
 * @param amounts at those places
 */
record Sparse(int[] places, long[] amounts) {
    static final Sparse NOTHING = new Sparse(new int[0], new long[0]);

    /** The same without the places where nothing is. */
    static Sparse of(long[] all) {
        int size = 0;
        for (long amount : all) {
            size += amount == 0 ? 0 : 1;
        }
        int[] places = new int[size];
        long[] amounts = new long[size];
        int k = 0;
        for (int place = 0; k < size; place++) {
            if (all[place] != 0) {
                places[k] = place;
                amounts[k++] = all[place];
            }
        }
        return new Sparse(places, amounts);
    }

    /** The amounts at some places, rising; those of nothing are left out. */
    static Sparse at(int[] places, IntToLongFunction amount) {
        int[] kept = new int[places.length];
        long[] amounts = new long[places.length];
        int size = 0;
        for (int place : places) {
            long at = amount.applyAsLong(place);
            if (at != 0) {
                kept[size] = place;
                amounts[size++] = at;
            }
        }
        return new Sparse(Arrays.copyOf(kept, size), Arrays.copyOf(amounts, size));
    }

    /** Both together. */
    Sparse plus(Sparse other) {
        int[] at = new int[places.length + other.places.length];
        long[] sums = new long[at.length];
        int size = 0;
        int k = 0;
        int m = 0;
        while (k < places.length || m < other.places.length) {
            boolean mine = m == other.places.length || k < places.length && places[k] <= other.places[m];
            boolean others = k == places.length || m < other.places.length && other.places[m] <= places[k];
            at[size] = mine ? places[k] : other.places[m];
            sums[size++] = (mine ? amounts[k++] : 0) + (others ? other.amounts[m++] : 0);
        }
        return new Sparse(Arrays.copyOf(at, size), Arrays.copyOf(sums, size));
    }

    /** The same at some of its places, by where those stand among them. */
    Sparse within(int[] some) {
        int[] kept = new int[places.length];
        long[] inside = new long[places.length];
        int size = 0;
        for (int k = 0; k < places.length; k++) {
            int at = Arrays.binarySearch(some, places[k]);
            if (at >= 0) {
                kept[size] = at;
                inside[size++] = amounts[k];
            }
        }
        return new Sparse(Arrays.copyOf(kept, size), Arrays.copyOf(inside, size));
    }

    int size() {
        return places.length;
    }

    /** The amount at one place. */
    long at(int place) {
        int k = Arrays.binarySearch(places, place);
        return k < 0 ? 0 : amounts[k];
    }

    /** Whether it is nowhere more than the other. */
    boolean isAtMost(Sparse other) {
        int k = 0;
        int m = 0;
        while (k < places.length || m < other.places.length) {
            boolean mine = m == other.places.length || k < places.length && places[k] <= other.places[m];
            boolean others = k == places.length || m < other.places.length && other.places[m] <= places[k];
            if ((mine ? amounts[k++] : 0) > (others ? other.amounts[m++] : 0)) {
                return false;
            }
        }
        return true;
    }

    /** Adds each amount at its place. */
    void addTo(long[] all) {
        for (int k = 0; k < places.length; k++) {
            all[places[k]] += amounts[k];
        }
    }
}
