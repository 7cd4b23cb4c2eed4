package fencerow.terms;

import java.util.List;
import java.util.Optional;

/** What is known of one feature on one machine. */
public sealed interface Fact {
    /**
     * It is there.
     *
     * @param count how many, at least 1
     * @param kind  which kind, where the feature has kinds and it is known
     */
    record Fitted(int count, Optional<String> kind) implements Fact {
        /** @throws IllegalArgumentException if the count is below 1 */
        public Fitted {
            if (count < 1) {
                throw new IllegalArgumentException("fitted count [" + count + "] is below 1; use Absent for none");
            }
        }
    }

    /** It is not there. */
    record Absent() implements Fact {}

    /**
     * Nobody has looked.
     *
     * @param possible what it may turn out to be, at least two states
     */
    record Unverified(List<Fact> possible) implements Fact {
        /** @throws IllegalArgumentException if fewer than two states are possible */
        public Unverified {
            possible = List.copyOf(possible);
            if (possible.size() < 2) {
                throw new IllegalArgumentException("only " + possible.size() + " state is possible; then it is known");
            }
        }
    }

    /** One piece, of no special kind. */
    static Fact fitted() {
        return new Fitted(1, Optional.empty());
    }

    /** Not there. */
    static Fact absent() {
        return new Absent();
    }
}
