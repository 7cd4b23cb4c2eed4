package fencerow.match;

import fencerow.needs.Requirement;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What would change the answer of a ranking: must-haves done without, or the budget raised.
 *
 * @param ranking the answer as it is
 */
public record WhatIf(Ranking ranking) {
    /**
     * What doing without one must-have would bring.
     *
     * @param dropped the must-have
     * @param gained  units that become ready, best first as ranked now
     * @param saves   by how much the lowest ready-to-work price falls; empty if there is no price now or it does not
     */
    public record Change(Requirement dropped, List<Match> gained, Optional<Money> saves) {}

    /**
     * What more money would bring.
     *
     * @param raise  the least by which the budget must rise for any of them
     * @param gained ready units that are over the budget, best first
     */
    public record Budget(Money raise, List<Match> gained) {}

    /**
     * What doing without two must-haves together would bring.
     *
     * @param gained of the units looked at those that become ready, best first as ranked now
     */
    public record Pair(Requirement dropped, Requirement alsoDropped, List<Match> gained) {}

    /** For each must-have, what doing without it would bring; those that bring nothing are left out. */
    public List<Change> changes() {
        return musts()
                .mapToObj(this::change)
                .filter(change -> !change.gained().isEmpty() || change.saves().isPresent())
                .toList();
    }

    private IntStream musts() {
        List<Requirement> requirements = ranking.needs().requirements();
        return IntStream.range(0, requirements.size()).filter(i -> requirements.get(i).must());
    }

    private Requirement requirement(int place) {
        return ranking.needs().requirements().get(place);
    }

    private Change change(int must) {
        List<Match> gained = new ArrayList<>();
        Optional<Money> lowest = Optional.empty();
        for (Match match : ranking.matches()) {
            Optional<ReadyPrice> price = match.priceWithout(List.of(must));
            if (price.isPresent()) {
                if (!match.verdict().hasPlan()) {
                    gained.add(match);
                }
                Money middle = price.get().middle();
                lowest = lowest.filter(so -> so.compareTo(middle) <= 0).or(() -> Optional.of(middle));
            }
        }
        Optional<Money> fallen = lowest;
        Optional<Money> saves = ranking.cheapest()
                .flatMap(now -> fallen.map(now::minus))
                .filter(saving -> saving.cents() > 0);
        return new Change(requirement(must), gained, saves);
    }

    /**
     * What the match's plan costs more than it would without some requirements, each end of the price by itself; never
     * below nothing. Empty where there is no plan.
     *
     * @param dropped of what was asked
     */
    public Optional<PriceRange> partOfPlan(Match match, Collection<Requirement> dropped) {
        List<Integer> places = musts().filter(must -> dropped.contains(requirement(must))).boxed().toList();
        PriceRange all = match.price().plan();
        return Optional.of(match)
                .filter(each -> each.verdict().hasPlan())
                .flatMap(each -> each.priceWithout(places))
                .map(ReadyPrice::plan)
                .map(rest -> part(all, rest));
    }

    private static PriceRange part(PriceRange all, PriceRange rest) {
        Money low = all.low().minus(rest.low());
        Money high = all.high().minus(rest.high());
        Money least = low.compareTo(high) <= 0 ? low : high;
        Money most = low.compareTo(high) <= 0 ? high : low;
        return new PriceRange(
                new Money(Math.max(0, least.cents())), new Money(Math.max(0, most.cents())));
    }

    /** What more money would bring; empty where there is no budget or every ready unit is within it. */
    public Optional<Budget> budget() {
        List<Match> over = ranking.ready().stream()
                .filter(match -> match.overBudget().isPresent())
                .toList();
        return over.stream()
                .flatMap(match -> match.overBudget().stream())
                .min(Comparator.naturalOrder())
                .map(raise -> new Budget(raise, over));
    }

    /**
     * The two must-haves without which most of the first units become ready, where no unit is ready and no single
     * must-have would make one so; empty otherwise, or if no two do. Takes long.
     *
     * @param first   how many units from the top are looked at
     * @param dropped says that nobody waits for it any more
     */
    public Optional<Pair> pair(int first, BooleanSupplier dropped) {
        if (!ranking.ready().isEmpty() || !changes().isEmpty()) {
            return Optional.empty();
        }
        List<Match> looked = ranking.matches().stream().limit(first).toList();
        List<Pair> pairs = new ArrayList<>();
        int[] musts = musts().toArray();
        for (int i = 0; i < musts.length && !dropped.getAsBoolean(); i++) {
            for (int j = i + 1; j < musts.length; j++) {
                List<Integer> both = List.of(musts[i], musts[j]);
                List<Match> gained = looked.stream()
                        .filter(match -> match.priceWithout(both).isPresent())
                        .toList();
                if (!gained.isEmpty()) {
                    pairs.add(new Pair(requirement(musts[i]), requirement(musts[j]), gained));
                }
            }
        }
        return pairs.stream().max(Comparator.comparingInt(pair -> pair.gained().size()));
    }

    /**
     * The cheapest single concession for the match: what makes it ready, or brings it within the budget; the one with
     * the lowest ready-to-work price. Empty if it is ready within the budget, or no single one will do.
     */
    public Optional<Concession> concession(Match match) {
        List<Concession> concessions = new ArrayList<>();
        boolean ready = match.verdict().hasPlan();
        if (ready && match.overBudget().isEmpty()) {
            return Optional.empty();
        }
        match.overBudget().ifPresent(over -> concessions.add(new Concession.Raise(over, match.price())));
        musts().forEach(must -> match.priceWithout(List.of(must))
                .filter(price -> !ready || isWithinBudget(price))
                .ifPresent(price -> concessions.add(new Concession.Without(requirement(must), price))));
        return concessions.stream()
                .min(Comparator.comparing(concession -> concession.price().middle()));
    }

    private boolean isWithinBudget(ReadyPrice price) {
        return ranking.needs().budget().stream().allMatch(most -> price.middle().compareTo(most) <= 0);
    }
}
