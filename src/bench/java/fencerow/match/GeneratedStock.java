package fencerow.match;

import fencerow.needs.Answers;
import fencerow.needs.Completion;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.AskingPrice;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Money;
import fencerow.terms.Offering;
import fencerow.terms.Relation;
import fencerow.terms.Threshold;
import fencerow.terms.UnitId;
import fencerow.visit.Showroom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/** Units and shoppers like the demo's, generated to size; the same for the same seed. */
final class GeneratedStock {
    static final int MUSTS = 12;
    static final int WISHES = 8;
    private static final int SHOPPERS_DRAWN = 300;

    private final Showroom showroom;
    private final Random random;

    GeneratedStock(Showroom showroom, long seed) {
        this.showroom = showroom;
        this.random = new Random(seed);
    }

    /** Units that differ from the demo's in what is fitted, what is not verified, and price. */
    List<Unit> units(int count) {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            units.add(varied(showroom.units().get(random.nextInt(showroom.units().size())), i));
        }
        return units;
    }

    private Unit varied(Unit like, int number) {
        Map<FeatureId, Fact> facts = new HashMap<>(like.facts());
        for (Feature feature : showroom.catalogue().features()) {
            Offering offering = like.model().offeringOf(feature);
            if ((offering == Offering.EXTRA || offering == Offering.COMMON) && feature.kinds().isEmpty()) {
                int drawn = random.nextInt(20);
                if (drawn < 3) {
                    facts.put(feature.id(), drawn == 0
                            ? new Fact.Unverified(List.of(Fact.absent(), Fact.fitted()))
                            : Fact.fitted());
                }
            }
        }
        Money asking = like.price().asking().plus(Money.ofDollars((long) random.nextInt(4000)));
        var price = new AskingPrice(
                asking, Optional.empty(), like.price().freight(), like.price().setup(), like.price().fees());
        return new Unit(
                new UnitId("g-" + number),
                like.model(),
                like.condition(),
                like.year(),
                like.hours(),
                like.availability(),
                like.leadDays(),
                price,
                facts,
                like.bundled(),
                like.catchUp());
    }

    /** Of many random shoppers, the few for whom nearest to the share of the lot can be made ready. */
    List<Needs> shoppers(Lot lot, double share, int count) {
        record Drawn(Needs needs, double off) {}
        List<Drawn> all = new ArrayList<>();
        for (int i = 0; i < SHOPPERS_DRAWN; i++) {
            Needs needs = shopper();
            double ready = Ranking.of(lot, needs).ready().size();
            all.add(new Drawn(needs, Math.abs(ready / lot.units().size() - share)));
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(Drawn::off))
                .limit(count)
                .map(Drawn::needs)
                .toList();
    }

    /** The needs of several random shoppers put together, cut to size. */
    Needs shopper() {
        List<Requirement> musts = new ArrayList<>();
        List<Requirement> wishes = new ArrayList<>();
        while (musts.size() < MUSTS) {
            Answers answers = new Completion(showroom.questionnaire(), random).complete(Answers.NONE);
            for (Requirement each : showroom.questionnaire().needs(answers).requirements()) {
                List<Requirement> to = each.must() ? musts : wishes;
                if (to.size() < (each.must() ? MUSTS : WISHES)
                        && to.stream().noneMatch(other -> other.demand().of().equals(each.demand().of()))) {
                    to.add(each);
                }
            }
        }
        musts.addAll(wishes);
        return of(musts);
    }

    /** With a must-have more that the shopper did not ask for. */
    Needs added(Needs needs) {
        Set<Requirement> known = Set.copyOf(needs.requirements());
        while (true) {
            for (Requirement each : shopper().musts()) {
                if (!known.contains(each)) {
                    List<Requirement> more = new ArrayList<>(needs.requirements());
                    more.add(0, each);
                    return of(more);
                }
            }
        }
    }

    /** Without one of the must-haves. */
    Needs dropped(Needs needs) {
        return needs.without(needs.musts().get(random.nextInt(needs.musts().size())));
    }

    /** With the amounts that one of the must-haves asks for so many times as hard; as it is where none asks for one. */
    Needs harder(Needs needs, double times) {
        List<Requirement> requirements = new ArrayList<>(needs.requirements());
        List<Integer> places = new ArrayList<>();
        for (int r = 0; r < requirements.size(); r++) {
            Requirement each = requirements.get(r);
            if (each.must() && !harder(each, times).equals(each)) {
                places.add(r);
            }
        }
        if (!places.isEmpty()) {
            int place = places.get(random.nextInt(places.size()));
            requirements.set(place, harder(requirements.get(place), times));
        }
        return of(requirements);
    }

    private static Requirement harder(Requirement requirement, double times) {
        List<Demand> demands =
                requirement.demands().stream().map(demand -> harder(demand, times)).toList();
        return new Requirement(
                requirement.id(), demands, requirement.must(), requirement.weight(), requirement.why());
    }

    private static Demand harder(Demand demand, double times) {
        if (demand.threshold() instanceof Threshold.Fixed fixed
                && fixed.amount().dimension() != Dimension.COUNT) {
            double factor = demand.relation() == Relation.AT_LEAST ? times : 1 / times;
            var amount = new Amount(fixed.amount().dimension(), fixed.amount().si() * factor);
            return new Demand(demand.of(), demand.relation(), Threshold.of(amount), demand.in());
        }
        return demand;
    }

    private static Needs of(List<Requirement> requirements) {
        return new Needs(requirements, Set.of(), Set.of(), Optional.empty(), OptionalDouble.empty());
    }
}
