package fencerow.content;

import fencerow.terms.TopicId;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Every id that was declared, with its place; says which ids are taken, unknown or misspelt. */
final class Ids {
    private static final Set<Kind> ITEMS = EnumSet.of(Kind.ADD_ON, Kind.ATTACHMENT, Kind.CONDITION);

    private final Problems problems;
    private final Map<Kind, Map<String, Place>> places = new EnumMap<>(Kind.class);
    private final Set<Kind> incomplete = EnumSet.noneOf(Kind.class);

    Ids(Problems problems) {
        this.problems = problems;
        for (Kind kind : Kind.values()) {
            places.put(kind, new LinkedHashMap<>());
        }
    }

    /** Takes an id into use; reports one that is taken or is not spelt as an id. */
    boolean declare(Kind kind, String id, Place place) {
        if (kind != Kind.OPTION) {
            try {
                new TopicId(id);
            } catch (IllegalArgumentException e) {
                problems.error(place, "[" + id + "] is not an id",
                        "use lower-case letters, digits and single hyphens, at most 60 characters");
                return false;
            }
        }
        for (Kind other : ITEMS.contains(kind) ? ITEMS : EnumSet.of(kind)) {
            Optional<Place> taken = find(other, id);
            if (taken.isPresent()) {
                problems.error(place, "the " + other.word() + " [" + id + "] is already there at " + taken.get(),
                        "rename or delete one of them");
                return false;
            }
        }
        of(kind).put(id, place);
        return true;
    }

    /** A file of this kind could not be read: no id can be called unknown. */
    void markIncomplete(Kind kind) {
        incomplete.add(kind);
    }

    boolean isIncomplete(Kind kind) {
        return incomplete.contains(kind);
    }

    /** Whether the id is declared, or may be in what could not be read. */
    boolean knows(Kind kind, String id) {
        return of(kind).containsKey(id) || incomplete.contains(kind);
    }

    /** Whether the id is declared as one of the kinds; reports it if it is not and all of them could be read. */
    boolean require(String id, Place place, Kind... kinds) {
        return require(id, place, problems, kinds);
    }

    /** The same for a reading that comes after all ids were declared. */
    boolean require(String id, Place place, Problems told, Kind... kinds) {
        Set<String> known = new HashSet<>();
        for (Kind kind : kinds) {
            known.addAll(all(kind));
        }
        if (known.contains(id)) {
            return true;
        }
        if (id.isEmpty() || List.of(kinds).stream().anyMatch(incomplete::contains)) {
            return false;
        }
        List<String> words = List.of(kinds).stream().map(Kind::word).toList();
        told.error(place, "there is no " + String.join(" or ", words) + " [" + id + "]",
                Nearest.advice(id, known, "correct the id, or add what it stands for"));
        return false;
    }

    Optional<Place> find(Kind kind, String id) {
        return Optional.ofNullable(of(kind).get(id));
    }

    /** The place of what is known to be declared. */
    Place placeOf(Kind kind, String id) {
        return find(kind, id).orElseThrow(() -> new IllegalStateException("no " + kind.word() + " [" + id + "]"));
    }

    Set<String> all(Kind kind) {
        return of(kind).keySet();
    }

    Places places() {
        return new Places(places);
    }

    private Map<String, Place> of(Kind kind) {
        return places.computeIfAbsent(kind, k -> new LinkedHashMap<>());
    }
}
