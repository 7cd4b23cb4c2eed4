package fencerow.content;

import fencerow.terms.Capability;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads {@code capabilities.yaml}. */
final class CapabilityReader {
    private final Ids ids;
    private final Capabilities capabilities;

    CapabilityReader(Ids ids, Capabilities capabilities) {
        this.ids = ids;
        this.capabilities = capabilities;
    }

    /** Reads and declares all of them. */
    List<Capability> read(YamlNode top) {
        List<Capability> all = new ArrayList<>();
        for (YamlNode.Entry entry : top.entries()) {
            if (isFigure(entry) || !ids.declare(Kind.CAPABILITY, entry.key(), entry.place())) {
                continue;
            }
            int before = top.problems().count();
            YamlMap map = entry.value().map("dimension", "combine", "own", "supply");
            Dimension dimension = map.choice("dimension", Dimension.values(), Dimension::id);
            capabilities.declare(entry.key(), dimension);
            Capability.Combine combine = map.has("combine")
                    ? map.choice("combine", Capability.Combine.values(), c -> c.name().toLowerCase(Locale.ROOT))
                    : Capability.Combine.SUM;
            List<Figure> own = map.list("own").stream()
                    .map(node -> node.choice(Figure.values(), Figure::id))
                    .toList();
            int supply = map.findWhole("supply", 0, 9).orElse(0);
            top.problems()
                    .make(map.place(), before, () ->
                            new Capability(new CapabilityId(entry.key()), dimension, combine, own, supply))
                    .ifPresent(all::add);
        }
        return all;
    }

    private static boolean isFigure(YamlNode.Entry entry) {
        Optional<Figure> figure =
                Arrays.stream(Figure.values()).filter(each -> each.id().equals(entry.key())).findFirst();
        figure.ifPresent(each -> entry.value().problems().error(entry.place(),
                "[" + each.id() + "] is a figure of the data sheet already", "delete it here or choose another id"));
        return figure.isPresent();
    }
}
