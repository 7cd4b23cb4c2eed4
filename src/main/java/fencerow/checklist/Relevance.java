package fencerow.checklist;

import fencerow.match.Blocked;
import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.match.Ranking;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which features and capabilities this shopper's work touches, and through which requirement: what a requirement asks
 * for, what the items in the plans for it need in turn, and what stands in the way where there is no plan.
 */
public final class Relevance {
    private final Catalogue catalogue;
    private final Map<FeatureId, Requirement> byFeature = new HashMap<>();
    private final Map<CapabilityId, Requirement> byCapability = new HashMap<>();
    private final Set<FeatureId> standInTheWay = new HashSet<>();

    private Relevance(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Follows every requirement of the needs; must-haves first, so that a feature needed by both counts as needed. */
    public static Relevance of(Catalogue catalogue, Needs needs, Ranking ranking) {
        var relevance = new Relevance(catalogue);
        Set<ItemId> considered = itemsConsidered(ranking);
        needs.musts().forEach(must -> relevance.follow(must, considered));
        needs.wishes().forEach(wish -> relevance.follow(wish, considered));
        for (Match match : ranking.matches()) {
            if (match.finding() instanceof Finding.Infeasible infeasible) {
                for (Blocked blocked : infeasible.why()) {
                    if (cannotBePutRight(blocked.rule())) {
                        relevance.featureOf(blocked.of()).ifPresent(relevance.standInTheWay::add);
                    }
                }
            }
        }
        return relevance;
    }

    /** The requirement through which the feature matters; must-haves before wishes. */
    public Optional<Requirement> requirement(FeatureId feature) {
        return Optional.ofNullable(byFeature.get(feature));
    }

    /** The requirement through which the capability matters; must-haves before wishes. */
    public Optional<Requirement> requirement(CapabilityId capability) {
        return Optional.ofNullable(byCapability.get(capability));
    }

    /** Whether the lack of the feature, which nobody can add later, keeps some unit from a must-have. */
    public boolean costsTheJob(FeatureId feature) {
        return standInTheWay.contains(feature);
    }

    private static boolean cannotBePutRight(Blocked.Rule rule) {
        return switch (rule) {
            case NEVER_ON_MODEL, FACTORY_ONLY, CANNOT_BE_ADDED -> true;
            case NOT_FOR_CLASS, NOT_SOLD_HERE, TOO_MANY_HOURS, TOO_LITTLE, TOO_MUCH, IN_THE_WAY, NOT_TOGETHER -> false;
        };
    }

    private static Set<ItemId> itemsConsidered(Ranking ranking) {
        Set<ItemId> items = new LinkedHashSet<>();
        for (Match match : ranking.matches()) {
            match.findPlan().ifPresent(plan -> plan.lines().stream().map(Plan.Line::item).forEach(items::add));
            if (match.finding() instanceof Finding.Infeasible infeasible) {
                infeasible.why().forEach(blocked -> blocked.item().ifPresent(items::add));
            }
        }
        return items;
    }

    private void follow(Requirement requirement, Set<ItemId> considered) {
        Deque<CapabilityId> open = new ArrayDeque<>(Set.of(requirement.demand().of()));
        Set<CapabilityId> seen = new HashSet<>();
        while (!open.isEmpty()) {
            CapabilityId wanted = open.remove();
            if (!seen.add(wanted)) {
                continue;
            }
            byCapability.putIfAbsent(wanted, requirement);
            for (Feature feature : catalogue.features()) {
                if (provides(feature, wanted)) {
                    byFeature.putIfAbsent(feature.id(), requirement);
                }
            }
            for (Item item : catalogue.items()) {
                if (considered.contains(item.id()) && provides(item, wanted)) {
                    item.needs().stream().map(Demand::of).forEach(open::add);
                }
            }
        }
    }

    private boolean provides(Feature feature, CapabilityId wanted) {
        return featureOf(wanted).equals(Optional.of(feature.id()))
                || feature.gives().stream().anyMatch(effect -> adds(effect, wanted))
                || feature.kindGives().values().stream()
                        .anyMatch(effects -> effects.stream().anyMatch(effect -> adds(effect, wanted)));
    }

    private boolean provides(Item item, CapabilityId wanted) {
        return catalogue.effects(item).stream().anyMatch(effect -> adds(effect, wanted));
    }

    private static boolean adds(Effect effect, CapabilityId wanted) {
        return effect.of().equals(wanted) && effect.amount().si() > 0;
    }

    private Optional<FeatureId> featureOf(CapabilityId capability) {
        return capability.featureName().map(FeatureId::new).filter(id -> catalogue.findFeature(id).isPresent());
    }
}
