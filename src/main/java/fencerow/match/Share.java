package fencerow.match;

import java.util.Arrays;
import java.util.List;

/**
 * An answered part with its place in the problem. Parts of problems that differ only in whose pieces they have are one.
 *
 * @param slice  where it stands
 * @param pieces its unverified pieces
 * @param part   the answer
 */
record Share(Split.Slice slice, List<Problem.Piece> pieces, Part part) {
    /** Those of the requirements that are must-haves of the part, as it numbers them. */
    List<Integer> own(List<Integer> requirements) {
        return requirements.stream()
                .map(requirement -> Arrays.binarySearch(slice.musts(), requirement))
                .filter(must -> must >= 0)
                .toList();
    }

    /** The same seen from a larger problem that has the present one as a slice. */
    Share in(Split.Slice larger) {
        return new Share(slice.in(larger), pieces, part);
    }
}
