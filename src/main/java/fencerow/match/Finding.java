package fencerow.match;

import fencerow.needs.Requirement;
import java.util.List;
import java.util.Optional;

/** Whether a unit can meet every must-have, and how or why not. */
public sealed interface Finding {
    /**
     * It can.
     *
     * @param best            the cheapest plan
     * @param withoutStopgap  where the cheapest uses a stopgap: the cheapest that does not, if there is one
     */
    record Feasible(Plan best, Optional<Plan> withoutStopgap) implements Finding {}

    /**
     * It cannot.
     *
     * @param irreducible must-haves that cannot be met together; without any one of them the rest of the set can
     * @param why         what stands in the way of whatever could have met them
     */
    record Infeasible(List<Requirement> irreducible, List<Blocked> why) implements Finding {
        /** Copies the lists. */
        public Infeasible {
            irreducible = List.copyOf(irreducible);
            why = List.copyOf(why);
        }
    }
}
