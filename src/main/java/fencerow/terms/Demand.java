package fencerow.terms;

/**
 * What work asks of one capability in one working state.
 *
 * @param of        the capability
 * @param relation  at least or at most
 * @param threshold how much
 * @param in        the working state it must hold in
 */
public record Demand(CapabilityId of, Relation relation, Threshold threshold, StateId in) {
    /** The state of demands that do not depend on what is mounted. */
    public static final StateId ANY_STATE = new StateId("any");

    /** That the capability is there at all, whatever is mounted. */
    public static Demand flag(CapabilityId of) {
        return new Demand(of, Relation.AT_LEAST, Threshold.of(Amount.count(1)), ANY_STATE);
    }
}
