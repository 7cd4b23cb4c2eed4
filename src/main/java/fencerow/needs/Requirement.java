package fencerow.needs;

import fencerow.terms.Demand;
import java.util.ArrayList;
import java.util.List;

/**
 * One thing the work needs from a machine, and why.
 *
 * @param id     stable for the same answers: question, option and place in its rule
 * @param demands what is needed: the same in one or more working states; the worst decides
 * @param must   whether the shopper cannot do without it
 * @param weight how much a wish counts, at least 1
 * @param why    the answer that led to it
 */
public record Requirement(String id, List<Demand> demands, boolean must, int weight, Because why) {
    /** @throws IllegalArgumentException if the weight is below 1 or nothing is demanded */
    public Requirement {
        demands = List.copyOf(demands);
        if (demands.isEmpty()) {
            throw new IllegalArgumentException("requirement [" + id + "] demands nothing; give at least one demand");
        }
        if (weight < 1) {
            throw new IllegalArgumentException("weight [" + weight + "] of requirement [" + id + "] is below 1");
        }
    }

    /** In one working state. */
    public Requirement(String id, Demand demand, boolean must, int weight, Because why) {
        this(id, List.of(demand), must, weight, why);
    }

    /** What is needed, in the first of its working states. */
    public Demand demand() {
        return demands.get(0);
    }

    /** Whether the other differs only in its id and working states. */
    boolean isSameInOtherStates(Requirement other) {
        Demand one = demand();
        Demand two = other.demand();
        return must == other.must
                && weight == other.weight
                && why.equals(other.why)
                && one.of().equals(two.of())
                && one.relation() == two.relation()
                && one.threshold().equals(two.threshold());
    }

    /** The same in the other's working states as well. */
    Requirement and(Requirement other) {
        List<Demand> all = new ArrayList<>(demands);
        all.addAll(other.demands);
        return new Requirement(id, all, must, weight, why);
    }
}
