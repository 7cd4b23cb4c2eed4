package fencerow.match;

import fencerow.stock.AskingPrice;
import fencerow.stock.Model;
import fencerow.stock.Unit;
import fencerow.terms.Effect;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Units laid out for matching by all that does not depend on a shopper. Made once for the units; immutable; may be used
 * from any thread.
 */
public final class Lot {
    private final Index index;
    private final List<Unit> units;
    private final Money allowed;
    private final List<Variety> varieties;
    private final int[] varietyOf;
    private final List<List<List<List<Effect>>>> effects;
    private final int[][] factsOf;
    private final List<PriceRange> catchUp;
    private final Set<ItemId> bundled;
    private final List<int[][]> seen;

    private Lot(Lot same, Money allowed) {
        this.index = same.index;
        this.units = same.units;
        this.allowed = allowed;
        this.varieties = same.varieties;
        this.varietyOf = same.varietyOf;
        this.effects = same.effects;
        this.factsOf = same.factsOf;
        this.catchUp = same.catchUp;
        this.bundled = same.bundled;
        this.seen = same.seen;
    }

    Lot(Index index, Collection<Unit> units) {
        this.index = index;
        this.allowed = Money.ZERO;
        this.varieties = new ArrayList<>();
        this.effects = new ArrayList<>();
        this.catchUp = new ArrayList<>();
        this.bundled = new HashSet<>();
        this.units = List.copyOf(units);
        this.varietyOf = new int[units.size()];
        this.factsOf = new int[units.size()][];
        IdentityHashMap<Model, Integer> models = new IdentityHashMap<>();
        Map<Variety.Key, Integer> numbers = new HashMap<>();
        List<Map<Fact, Integer>> stateNumbers = new ArrayList<>();
        List<BitSet[]> found = new ArrayList<>();
        for (int f = 0; f < index.features().size(); f++) {
            effects.add(new ArrayList<>());
            stateNumbers.add(new HashMap<>());
        }
        for (int u = 0; u < varietyOf.length; u++) {
            Unit unit = this.units.get(u);
            int model = models.computeIfAbsent(unit.model(), key -> models.size());
            var key = new Variety.Key(model, unit.condition(), unit.availability(), unit.bundled());
            varietyOf[u] = numbers.computeIfAbsent(key, each -> {
                varieties.add(new Variety(index, unit));
                found.add(Stream.generate(BitSet::new).limit(stateNumbers.size()).toArray(BitSet[]::new));
                return varieties.size() - 1;
            });
            factsOf[u] = facts(unit, stateNumbers);
            for (int f = 0; f < factsOf[u].length; f++) {
                found.get(varietyOf[u])[f].set(factsOf[u][f]);
            }
            catchUp.add(catchUp(unit));
            bundled.addAll(unit.bundled());
        }
        this.seen = found.stream()
                .map(facts -> Stream.of(facts).map(each -> each.stream().toArray()).toArray(int[][]::new))
                .toList();
    }

    private int[] facts(Unit unit, List<Map<Fact, Integer>> numbers) {
        int[] facts = new int[numbers.size()];
        for (int f = 0; f < facts.length; f++) {
            Feature feature = index.features().get(f);
            List<List<List<Effect>>> seen = effects.get(f);
            facts[f] = numbers.get(f).computeIfAbsent(unit.fact(feature.id()), fact -> {
                seen.add(open(fact).stream().map(state -> effects(feature, state)).toList());
                return seen.size() - 1;
            });
        }
        return facts;
    }

    private static List<Fact> open(Fact fact) {
        return fact instanceof Fact.Unverified unverified ? unverified.possible() : List.of(fact);
    }

    private static List<Effect> effects(Feature feature, Fact fact) {
        return fact instanceof Fact.Fitted fitted
                ? feature.effects(fitted.kind()).stream()
                        .map(effect -> effect.times(fitted.count()))
                        .toList()
                : List.of();
    }

    private PriceRange catchUp(Unit unit) {
        return unit.catchUp().stream()
                .flatMap(note -> index.catalogue()
                        .prices()
                        .findLater(note, unit.model().machineClass())
                        .stream())
                .reduce(PriceRange.ZERO, PriceRange::plus);
    }

    /** For each feature of the catalogue the places of what is known of it on units of the variety, rising. */
    int[][] seen(int variety) {
        return seen.get(variety);
    }

    /** Items that come with some unit. */
    Set<ItemId> bundled() {
        return bundled;
    }

    Index index() {
        return index;
    }

    /** The units, in the order given. */
    public List<Unit> units() {
        return units;
    }

    /** The same with one unit more. */
    public Lot with(Unit unit) {
        List<Unit> more = new ArrayList<>(units);
        more.add(unit);
        return new Lot(index, more).allowing(allowed);
    }

    /** The same where so much is allowed for the shopper's own tractor on each unit whose price does not say. */
    public Lot allowing(Money trade) {
        return new Lot(this, trade);
    }

    /** What is asked for the unit of this shopper. */
    AskingPrice price(int unit) {
        return units.get(unit).price().allowing(allowed);
    }

    List<Variety> varieties() {
        return varieties;
    }

    /** The place of the unit's variety. */
    int varietyOf(int unit) {
        return varietyOf[unit];
    }

    /**
     * For each fact that is known on some unit of the feature, by its place in the catalogue, and for each state that
     * the fact leaves open: what the feature does.
     */
    List<List<List<Effect>>> effects(int feature) {
        return effects.get(feature);
    }

    /** For each feature of the catalogue the place of what is known of it on the unit. */
    int[] facts(int unit) {
        return factsOf[unit];
    }

    /** What putting right what is noted on the unit costs. */
    PriceRange catchUp(int unit) {
        return catchUp.get(unit);
    }
}
