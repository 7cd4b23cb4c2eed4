package fencerow.content;

import fencerow.stock.Attachment;
import fencerow.terms.Amount;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Effect;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.StateId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Reads {@code attachments.yaml}. */
final class AttachmentReader {
    private static final int HOURS_OF_A_YEAR = 8784;

    private final EffectReader effects;
    private final IdLists lists;

    AttachmentReader(EffectReader effects, IdLists lists) {
        this.effects = effects;
        this.lists = lists;
    }

    List<Attachment> read(YamlNode top) {
        List<Attachment> all = new ArrayList<>();
        for (YamlNode.Entry entry : top.entries()) {
            int before = top.problems().count();
            YamlMap map = entry.value().map("does", "state", "mass", "width", "gives", "needs", "excludes", "classes",
                    "stopgap-hours");
            Set<MachineClass> classes = IdLists.classes(map);
            Set<JobId> does = Set.copyOf(lists.jobs(map.list("does")));
            StateId state = map.need("state").flatMap(effects::state).orElse(Demand.ANY_STATE);
            Amount mass = positive(map, "mass", Dimension.MASS);
            Amount width = positive(map, "width", Dimension.LENGTH);
            List<Effect> gives = effects.effects(map.list("gives"));
            List<Demand> needs = effects.demands(map.list("needs"), state, Optional.of(mass));
            Set<ItemId> excludes = lists.items(map.list("excludes"));
            OptionalInt stopgap = map.findWhole("stopgap-hours", 1, HOURS_OF_A_YEAR);
            if (!map.has("does") && !map.has("gives")) {
                top.problems().warning(entry.place(), "the attachment [" + entry.key() + "] does no job",
                        "name the jobs under does, or what it gives");
            }
            top.problems()
                    .make(entry.place(), before, () -> new Attachment(new ItemId(entry.key()), classes, does, state,
                            mass, width, gives, needs, excludes, stopgap))
                    .ifPresent(all::add);
        }
        return all;
    }

    private static Amount positive(YamlMap map, String key, Dimension dimension) {
        Amount amount = map.amount(key, dimension);
        map.find(key).filter(node -> amount.si() < 0).ifPresent(node ->
                node.error("[" + node.text() + "] is less than nothing", "write an amount above 0"));
        return amount;
    }
}
