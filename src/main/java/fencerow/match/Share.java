package fencerow.match;

import java.util.Arrays;
import java.util.List;

/**
 * An answered part with its place in the problem.
 *
 * @param slice where it stands
 * @param part  the answer
 */
record Share(Split.Slice slice, Part part) {
    /** Those of the requirements that are must-haves of the part, as it numbers them. */
    List<Integer> own(List<Integer> requirements) {
        return requirements.stream()
                .map(requirement -> Arrays.binarySearch(slice.musts(), requirement))
                .filter(must -> must >= 0)
                .toList();
    }

    /** The same seen from a larger problem that has the present one as a slice. */
    Share in(Split.Slice larger) {
        return new Share(
                new Split.Slice(
                        places(slice.items(), larger.items()),
                        places(slice.rows(), larger.rows()),
                        places(slice.musts(), larger.musts()),
                        slice.problem()),
                part);
    }

    private static int[] places(int[] own, int[] larger) {
        int[] places = new int[own.length];
        for (int i = 0; i < own.length; i++) {
            places[i] = larger[own[i]];
        }
        return places;
    }
}
