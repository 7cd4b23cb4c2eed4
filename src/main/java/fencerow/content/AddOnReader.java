package fencerow.content;

import fencerow.stock.AddOn;
import fencerow.stock.Fitter;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Reads {@code add-ons.yaml}. */
final class AddOnReader {
    private static final int MOST_HOURS = 200;
    private static final int HOURS_OF_A_YEAR = 8784;

    private final EffectReader effects;
    private final IdLists lists;

    AddOnReader(EffectReader effects, IdLists lists) {
        this.effects = effects;
        this.lists = lists;
    }

    List<AddOn> read(YamlNode top) {
        List<AddOn> all = new ArrayList<>();
        for (YamlNode.Entry entry : top.entries()) {
            int before = top.problems().count();
            YamlMap map = entry.value().map(
                    "gives", "needs", "excludes", "classes", "max", "by", "hours", "stopgap-hours");
            Set<MachineClass> classes = IdLists.classes(map);
            int max = map.findWhole("max", 1, 20).orElse(1);
            List<Effect> gives = effects.effects(map.list("gives"));
            if (map.list("gives").isEmpty()) {
                top.problems().error(entry.place(), "the add-on [" + entry.key() + "] gives nothing",
                        "say under gives what it gives a tractor");
            }
            List<Demand> needs = effects.demands(map.list("needs"), Demand.ANY_STATE);
            Set<ItemId> excludes = lists.items(map.list("excludes"));
            Fitter by = map.choice("by", Fitter.values(), Fitter::id);
            YamlMap hours = map.map("hours", "low", "high");
            double low = hours.number("low", 0, MOST_HOURS);
            double high = hours.number("high", 0, MOST_HOURS);
            OptionalInt stopgap = map.findWhole("stopgap-hours", 1, HOURS_OF_A_YEAR);
            top.problems()
                    .make(hours.place(), before, () -> new AddOn(new ItemId(entry.key()), classes, max, gives, needs,
                            excludes, new AddOn.Fitting(low, high), by, stopgap))
                    .ifPresent(all::add);
        }
        return all;
    }
}
