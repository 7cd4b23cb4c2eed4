package fencerow.content;

import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What can stand where a capability is asked for, and what each measures. */
final class Capabilities {
    private final Ids ids;
    private final Problems problems;
    private final Map<String, Dimension> measured = new HashMap<>();
    private final Map<String, Collection<String>> kinds = new HashMap<>();

    Capabilities(Ids ids, Problems problems) {
        this.ids = ids;
        this.problems = problems;
        for (Figure figure : Figure.values()) {
            measured.put(figure.id(), figure.dimension());
        }
    }

    /** A declared capability. */
    void declare(String id, Dimension dimension) {
        measured.put(id, dimension);
    }

    /** The kinds a feature comes in. */
    void declareKinds(String feature, Collection<String> itsKinds) {
        kinds.put(feature, List.copyOf(itsKinds));
    }

    /** What it measures. */
    Dimension dimension(CapabilityId id) {
        return measured.getOrDefault(id.value(), Dimension.COUNT);
    }

    /** The capability that a text names; one that does not exist is reported. */
    Optional<CapabilityId> read(YamlNode node) {
        int before = problems.count();
        String text = node.text();
        Optional<CapabilityId> id = problems.make(node.place(), before, () -> new CapabilityId(text));
        return id.filter(known -> exists(known, node.place()));
    }

    private boolean exists(CapabilityId id, Place place) {
        String value = id.value();
        int colon = value.indexOf(':');
        if (colon >= 0) {
            String name = value.substring(colon + 1);
            return ids.require(name, place, value.startsWith("does:") ? Kind.JOB : Kind.ATTACHMENT);
        }
        int dot = value.indexOf('.');
        if (dot >= 0) {
            String feature = value.substring(0, dot);
            String kind = value.substring(dot + 1);
            return ids.require(feature, place, Kind.FEATURE) && hasKind(feature, kind, place);
        }
        if (measured.containsKey(value) || ids.find(Kind.FEATURE, value).isPresent()) {
            return true;
        }
        if (ids.isIncomplete(Kind.FEATURE) || ids.isIncomplete(Kind.CAPABILITY)) {
            return false;
        }
        List<String> all = new ArrayList<>(measured.keySet());
        all.addAll(ids.all(Kind.FEATURE));
        problems.error(place, "there is no capability, feature or figure [" + value + "]",
                Nearest.advice(value, all, "correct it, or declare it in capabilities.yaml"));
        return false;
    }

    /** Whether the feature comes in the kind; reported if it does not. */
    boolean hasKind(String feature, String kind, Place place) {
        Collection<String> known = kinds.getOrDefault(feature, List.of());
        if (known.contains(kind)) {
            return true;
        }
        problems.error(place, "the feature [" + feature + "] has no kind [" + kind + "]",
                known.isEmpty() ? "leave the kind out" : "use one of " + String.join(", ", known));
        return false;
    }
}
