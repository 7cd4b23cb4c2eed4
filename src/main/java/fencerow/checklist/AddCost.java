package fencerow.checklist;

import fencerow.match.Match;
import fencerow.match.Matcher;
import fencerow.match.Plan;
import fencerow.match.Verdict;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.PriceRange;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What it costs here to give a tractor one must-have, all others left aside. */
public sealed interface AddCost {
    /** It has it. */
    record Nothing() implements AddCost {}

    /** It can be added, for this. */
    record Costs(PriceRange range) implements AddCost {}

    /** Nothing sold here adds it. */
    record Impossible() implements AddCost {}

    /** It hangs on something nobody has checked. */
    record Unknown() implements AddCost {}

    /** For each of the units: the price of the cheapest plan for this must-have alone, with what the shopper owns. */
    static List<AddCost> of(Matcher matcher, List<Unit> units, Needs needs, Requirement must) {
        Needs alone =
                new Needs(List.of(must), needs.owned(), needs.hired(), Optional.empty(), needs.hoursPerYear());
        return matcher.match(units, alone).stream().map(AddCost::of).toList();
    }

    private static AddCost of(Match match) {
        Optional<Plan> plan = match.findPlan();
        if (plan.isPresent()) {
            return plan.get().isFree() ? new Nothing() : new Costs(plan.get().price());
        }
        return match.verdict() == Verdict.LOOK_CLOSER ? new Unknown() : new Impossible();
    }

    /**
     * For a tractor that lacks it, whichever that is: from the lowest to the highest price among the units here that
     * lack it. Unknown where every unit here has it, impossible where none that lacks it can be given it.
     */
    static AddCost usual(Collection<AddCost> ofUnits) {
        List<PriceRange> ranges = ofUnits.stream()
                .filter(Costs.class::isInstance)
                .map(cost -> ((Costs) cost).range())
                .toList();
        Optional<PriceRange> all = PriceRange.spanning(ranges);
        if (all.isPresent()) {
            return new Costs(all.get());
        }
        return ofUnits.stream().anyMatch(Impossible.class::isInstance) ? new Impossible() : new Unknown();
    }
}
