package fencerow.content;

import fencerow.terms.Effect;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.MachineClass;
import fencerow.terms.Offering;
import fencerow.terms.Stop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code features.yaml}. */
final class FeatureReader {
    private final Ids ids;
    private final EffectReader effects;

    FeatureReader(Ids ids, EffectReader effects) {
        this.ids = ids;
        this.effects = effects;
    }

    /** Declares ids and kinds, so that other records can name them. */
    void declare(YamlNode top) {
        for (YamlNode.Entry entry : top.entries()) {
            if (ids.declare(Kind.FEATURE, entry.key(), entry.place()) && entry.value().isMap()) {
                List<String> kinds = new ArrayList<>();
                for (YamlNode.Entry field : entry.value().entries()) {
                    if (field.key().equals("kinds") && field.value().isList()) {
                        field.value().list().forEach(kind -> kinds.add(kind.text()));
                    }
                }
                effects.capabilities().declareKinds(entry.key(), kinds);
            }
        }
    }

    /** Reads all of them, in display order. */
    List<Feature> read(YamlNode top) {
        List<Feature> all = new ArrayList<>();
        for (YamlNode.Entry entry : top.entries()) {
            int before = top.problems().count();
            YamlMap map = entry.value()
                    .map("stop", "core", "kinds", "count", "offering", "gives", "kinds-give", "hurts");
            Stop stop = map.choice("stop", Stop.values(), Stop::id);
            boolean core = map.flag("core");
            List<String> kinds = map.list("kinds").stream().map(YamlNode::text).toList();
            int most = map.findWhole("count", 1, 20).orElse(1);
            Map<MachineClass, Offering> offering = offering(map);
            List<Effect> gives = effects.effects(map.list("gives"));
            Map<String, List<Effect>> kindGives = new LinkedHashMap<>();
            for (YamlNode.Entry kind : map.entries("kinds-give")) {
                effects.capabilities().hasKind(entry.key(), kind.key(), kind.place());
                kindGives.put(kind.key(), effects.effects(kind.value().list()));
            }
            boolean hurts = map.flag("hurts");
            top.problems()
                    .make(entry.place(), before, () -> new Feature(
                            new FeatureId(entry.key()), stop, core, kinds, most, offering, gives, kindGives, hurts))
                    .ifPresent(all::add);
        }
        return all;
    }

    private static Map<MachineClass, Offering> offering(YamlMap map) {
        String[] classes = Arrays.stream(MachineClass.values()).map(MachineClass::id).toArray(String[]::new);
        YamlMap own = map.map("offering", classes);
        Map<MachineClass, Offering> offering = new EnumMap<>(MachineClass.class);
        for (MachineClass each : MachineClass.values()) {
            offering.put(each, own.choice(each.id(), Offering.values(), Offering::id));
        }
        return offering;
    }
}
