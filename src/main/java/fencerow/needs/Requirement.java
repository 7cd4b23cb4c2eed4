package fencerow.needs;

import fencerow.terms.Demand;

/**
 * One thing the work needs from a machine, and why.
 *
 * @param id     stable for the same answers: question, option and place in its rule
 * @param demand what is needed
 * @param must   whether the shopper cannot do without it
 * @param weight how much a wish counts, at least 1
 * @param why    the answer that led to it
 */
public record Requirement(String id, Demand demand, boolean must, int weight, Because why) {
    /** @throws IllegalArgumentException if the weight is below 1 */
    public Requirement {
        if (weight < 1) {
            throw new IllegalArgumentException("weight [" + weight + "] of requirement [" + id + "] is below 1");
        }
    }
}
