package fencerow.stock;

import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.StateId;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A tool that does jobs.
 *
 * @param does  the jobs it does
 * @param state the working state it is mounted in
 * @param mass  its own mass
 * @param width its working width
 */
public record Attachment(
        ItemId id,
        Set<MachineClass> classes,
        Set<JobId> does,
        StateId state,
        Amount mass,
        Amount width,
        List<Effect> gives,
        List<Demand> needs,
        Set<ItemId> excludes,
        OptionalInt stopgapHours)
        implements Item {
    /** Copies the collections. */
    public Attachment {
        classes = Set.copyOf(classes);
        does = Set.copyOf(does);
        gives = List.copyOf(gives);
        needs = List.copyOf(needs);
        excludes = Set.copyOf(excludes);
    }

    @Override
    public List<Effect> allEffects() {
        return Stream.of(
                        gives().stream(),
                        Stream.of(Effect.one(CapabilityId.has(id))),
                        does.stream().sorted().map(job -> Effect.one(CapabilityId.does(job))))
                .flatMap(effects -> effects)
                .toList();
    }

    /** One tractor needs one of each. */
    @Override
    public int max() {
        return 1;
    }
}
