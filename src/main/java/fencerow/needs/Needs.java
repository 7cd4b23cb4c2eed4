package fencerow.needs;

import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the answers come to: requirements with their reasons, and what goes with them.
 *
 * @param requirements  must-haves and wishes, in the order of the questions
 * @param owned         attachments the shopper has
 * @param hired         jobs the shopper will have done another way; they ask nothing of the tractor
 * @param budget        the most the shopper means to spend, made ready
 * @param hoursPerYear  how long the tractor will run in a year; bounds stopgaps
 */
public record Needs(
        List<Requirement> requirements,
        Set<ItemId> owned,
        Set<JobId> hired,
        Optional<Money> budget,
        OptionalDouble hoursPerYear) {
    /** Asking for nothing. */
    public static final Needs NONE =
            new Needs(List.of(), Set.of(), Set.of(), Optional.empty(), OptionalDouble.empty());

    /** Copies the collections. */
    public Needs {
        requirements = List.copyOf(requirements);
        owned = Set.copyOf(owned);
        hired = Set.copyOf(hired);
    }

    /** The requirements the shopper cannot do without. */
    public List<Requirement> musts() {
        return requirements.stream().filter(Requirement::must).toList();
    }

    /** The requirements the shopper would like met. */
    public List<Requirement> wishes() {
        return requirements.stream().filter(requirement -> !requirement.must()).toList();
    }

    /** The jobs that the tractor is asked to do. */
    public Set<JobId> jobs() {
        return musts().stream().flatMap(must -> must.why().job().stream()).collect(Collectors.toUnmodifiableSet());
    }

    /** The same without one requirement. */
    public Needs without(Requirement dropped) {
        return new Needs(
                requirements.stream().filter(r -> !r.equals(dropped)).toList(), owned, hired, budget, hoursPerYear);
    }
}
