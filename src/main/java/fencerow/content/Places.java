package fencerow.content;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Where every record was written, by kind and id. */
public final class Places {
    private final Map<Kind, Map<String, Place>> places = new EnumMap<>(Kind.class);

    /** Takes a copy. */
    Places(Map<Kind, Map<String, Place>> places) {
        places.forEach((kind, byId) -> this.places.put(kind, Collections.unmodifiableMap(new TreeMap<>(byId))));
    }

    /** Where the record was written. */
    public Optional<Place> find(Kind kind, String id) {
        return Optional.ofNullable(places.getOrDefault(kind, Map.of()).get(id));
    }

    /** All ids of a kind, sorted. */
    public Set<String> ids(Kind kind) {
        return places.getOrDefault(kind, Map.of()).keySet();
    }
}
