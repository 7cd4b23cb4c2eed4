package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.AddOn;
import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.PriceRange;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import fencerow.terms.Threshold;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Turns a unit and a shopper's needs into a {@link Problem}: only the items that can help, directly or through what
 * they need, and only the rows those can break.
 */
final class ProblemCompiler {
    private final Catalogue catalogue;
    private final Unit unit;
    private final Needs needs;
    private final Assortment assortment;
    private final Equipment equipment;
    private final List<Draft> drafts = new ArrayList<>();

    /** A row before the items are known. */
    private record Draft(Problem.Role role, String ownerItem, int requirement, Demand demand) {}

    private ProblemCompiler(Catalogue catalogue, Unit unit, Needs needs) {
        this.catalogue = catalogue;
        this.unit = unit;
        this.needs = needs;
        this.assortment = new Assortment(catalogue, unit, needs);
        this.equipment = new Equipment(catalogue, unit);
    }

    /** Compiles one unit for one shopper. */
    static Problem compile(Catalogue catalogue, Unit unit, Needs needs) {
        return new ProblemCompiler(catalogue, unit, needs).compile();
    }

    private Problem compile() {
        List<Requirement> requirements = needs.requirements();
        for (int i = 0; i < requirements.size(); i++) {
            Problem.Role role = requirements.get(i).must() ? Problem.Role.MUST : Problem.Role.WISH;
            drafts.add(new Draft(role, "", i, requirements.get(i).demand()));
        }
        List<Item> items = helpfulItems();
        addFeatureLimits(items);

        List<Problem.Candidate> candidates = items.stream().map(this::candidate).toList();
        List<Problem.Row> rows = new ArrayList<>();
        long[] base = new long[drafts.size()];
        for (int r = 0; r < drafts.size(); r++) {
            Draft draft = drafts.get(r);
            rows.add(row(draft, items));
            base[r] = base(draft.demand());
        }
        return new Problem(List.copyOf(candidates), List.copyOf(rows), base, pieces(rows), excludes(items));
    }

    private Problem.Candidate candidate(Item item) {
        PriceRange price = assortment.findPrice(item).orElseThrow();
        int minutes = item instanceof AddOn addOn ? addOn.fitting().minutes() : 0;
        return new Problem.Candidate(item, item.max(), price, price.middle().cents(), minutes);
    }

    /** Items that can be had and help some row, following what they need; in catalogue order. */
    private List<Item> helpfulItems() {
        Set<Item> found = new LinkedHashSet<>();
        Deque<Demand> open = new ArrayDeque<>();
        drafts.stream().filter(draft -> draft.role() == Problem.Role.MUST).forEach(draft -> open.add(draft.demand()));
        Set<Demand> seen = new HashSet<>();
        Set<Demand> limits = new HashSet<>();
        while (!open.isEmpty()) {
            Demand demand = open.remove();
            if (!seen.add(demand)) {
                continue;
            }
            for (Item item : catalogue.items()) {
                if (!found.contains(item)
                        && coefficient(item, demand) > 0
                        && assortment.refusal(item).isEmpty()) {
                    found.add(item);
                    for (Demand need : item.needs()) {
                        drafts.add(new Draft(Problem.Role.NEED, item.id().value(), -1, need));
                        open.add(need);
                    }
                    for (Demand limit : sharedLimits(item)) {
                        if (limits.add(limit)) {
                            drafts.add(new Draft(Problem.Role.LIMIT, "", -1, limit));
                            open.add(limit);
                        }
                    }
                }
            }
        }
        return catalogue.items().stream().filter(found::contains).toList();
    }

    /** That every shared resource the item takes from stays at nothing or above, in each state it is taken in. */
    private List<Demand> sharedLimits(Item item) {
        List<Demand> limits = new ArrayList<>();
        for (Effect effect : catalogue.effects(item)) {
            boolean isShared = catalogue.findCapability(effect.of())
                    .map(capability -> capability.supply() > 0)
                    .orElse(false);
            if (isShared && effect.amount().si() < 0) {
                Threshold nothing = Threshold.of(new Amount(effect.amount().dimension(), 0));
                Set<StateId> states = effect.in().isEmpty() ? Set.of(Demand.ANY_STATE) : effect.in();
                states.stream()
                        .sorted()
                        .forEach(state -> limits.add(new Demand(effect.of(), Relation.AT_LEAST, nothing, state)));
            }
        }
        return limits;
    }

    /** That no feature comes to more than the model, or any machine, can have. */
    private void addFeatureLimits(List<Item> items) {
        for (Feature feature : catalogue.features()) {
            Integer limit = unit.model().limits().get(feature.id());
            CapabilityId of = CapabilityId.of(feature.id());
            boolean given = items.stream()
                    .anyMatch(item -> catalogue.effects(item).stream().anyMatch(effect -> effect.of().equals(of)));
            if (given && (limit != null || feature.most() > 1)) {
                Threshold most = Threshold.of(Amount.count(limit != null ? limit : feature.most()));
                drafts.add(new Draft(Problem.Role.LIMIT, "", -1, new Demand(
                        of, Relation.AT_MOST, most, Demand.ANY_STATE)));
            }
        }
    }

    private Problem.Row row(Draft draft, List<Item> items) {
        long[] coefficient = new long[items.size()];
        int owner = -1;
        for (int i = 0; i < items.size(); i++) {
            coefficient[i] = coefficient(items.get(i), draft.demand());
            if (items.get(i).id().value().equals(draft.ownerItem())) {
                owner = i;
            }
        }
        Demand demand = draft.demand();
        return new Problem.Row(
                draft.role(),
                owner,
                draft.requirement(),
                demand.of(),
                demand.relation(),
                Equipment.dimension(catalogue, demand.of()),
                coefficient,
                bound(demand));
    }

    private long threshold(Demand demand) {
        return Levels.on(unit.model(), demand.threshold()).steps();
    }

    private long bound(Demand demand) {
        if (Equipment.isMax(catalogue, demand.of())) {
            return demand.relation() == Relation.AT_LEAST ? 1 : 0;
        }
        return demand.relation() == Relation.AT_LEAST ? threshold(demand) : -threshold(demand);
    }

    private long base(Demand demand) {
        long own = equipment.own(demand.of(), demand.in());
        if (Equipment.isMax(catalogue, demand.of())) {
            return maxTerm(own, demand);
        }
        return demand.relation() == Relation.AT_LEAST ? own : -own;
    }

    /** Where the best single source counts, a source either reaches the threshold or does nothing. */
    private long maxTerm(long amount, Demand demand) {
        boolean reaches = amount >= threshold(demand);
        if (demand.relation() == Relation.AT_LEAST) {
            return reaches ? 1 : 0;
        }
        return amount > threshold(demand) ? -1 : 0;
    }

    private long coefficient(Item item, Demand demand) {
        return term(catalogue.effects(item), demand);
    }

    private long term(List<Effect> effects, Demand demand) {
        if (Equipment.isMax(catalogue, demand.of())) {
            return maxTerm(Equipment.largest(effects, demand.of(), demand.in()), demand);
        }
        long sum = Equipment.sum(effects, demand.of(), demand.in());
        return demand.relation() == Relation.AT_LEAST ? sum : -sum;
    }

    private List<Problem.Piece> pieces(List<Problem.Row> rows) {
        List<Problem.Piece> pieces = new ArrayList<>();
        for (Map.Entry<Feature, Fact.Unverified> entry : equipment.unverified().entrySet()) {
            FeatureId feature = entry.getKey().id();
            List<Fact> possible = entry.getValue().possible();
            long[][] contribution = new long[possible.size()][rows.size()];
            boolean matters = false;
            for (int s = 0; s < possible.size(); s++) {
                List<Effect> effects = Equipment.effects(entry.getKey(), possible.get(s));
                for (int r = 0; r < rows.size(); r++) {
                    contribution[s][r] = term(effects, drafts.get(r).demand());
                    matters |= contribution[s][r] != 0 && rows.get(r).role() != Problem.Role.WISH;
                }
            }
            if (matters) {
                pieces.add(new Problem.Piece(feature, contribution));
            }
        }
        return List.copyOf(pieces);
    }

    private static boolean[][] excludes(List<Item> items) {
        boolean[][] excludes = new boolean[items.size()][items.size()];
        for (int i = 0; i < items.size(); i++) {
            for (int j = 0; j < items.size(); j++) {
                excludes[i][j] = items.get(i).excludes().contains(items.get(j).id())
                        || items.get(j).excludes().contains(items.get(i).id());
            }
        }
        return excludes;
    }
}
