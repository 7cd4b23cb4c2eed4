package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All units held against one shopper's needs, best first: by verdict, within budget before over it, score falling,
 * ready-to-work price rising, id.
 *
 * @param matches in that order
 */
public record Ranking(List<Match> matches) {
    private static final Comparator<Match> BEST_FIRST = Comparator.comparing(Match::verdict)
            .thenComparing(match -> match.overBudget().isPresent())
            .thenComparing(match -> match.score().mustsMet(), Comparator.reverseOrder())
            .thenComparing(match -> match.score().percent(), Comparator.reverseOrder())
            .thenComparing(match -> match.price().middle())
            .thenComparing(match -> match.unit().id());

    /** Copies the list. */
    public Ranking {
        matches = List.copyOf(matches);
    }

    /** Matches and ranks. */
    public static Ranking of(Matcher matcher, Collection<Unit> units, Needs needs) {
        return new Ranking(matcher.match(units, needs).stream().sorted(BEST_FIRST).toList());
    }

    /** Matches with a plan. */
    public List<Match> ready() {
        return matches.stream().filter(match -> match.verdict().hasPlan()).toList();
    }

    /** The lowest ready-to-work price, middle, among units with a plan. */
    public Optional<Money> cheapest() {
        return ready().stream().map(match -> match.price().middle()).min(Comparator.naturalOrder());
    }

    /**
     * What doing without one must-have would bring.
     *
     * @param dropped the must-have
     * @param gained  units that become ready, best first
     * @param saves   by how much the lowest ready-to-work price falls; empty if there is no price before or it does not
     */
    public record Change(Requirement dropped, List<Match> gained, Optional<Money> saves) {}

    /** For each must-have, what doing without it would bring; those that bring nothing are left out. */
    public List<Change> changes(Matcher matcher, Needs needs) {
        List<Unit> units = matches.stream().map(Match::unit).toList();
        List<Change> changes = new ArrayList<>();
        for (Requirement must : needs.musts()) {
            Ranking without = of(matcher, units, needs.without(must));
            List<Match> gained = without.ready().stream()
                    .filter(match -> ready().stream().noneMatch(now -> now.unit().equals(match.unit())))
                    .toList();
            Optional<Money> saves = cheapest()
                    .flatMap(now -> without.cheapest().map(now::minus))
                    .filter(saving -> saving.cents() > 0);
            if (!gained.isEmpty() || saves.isPresent()) {
                changes.add(new Change(must, gained, saves));
            }
        }
        return changes;
    }
}
