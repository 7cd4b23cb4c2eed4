package fencerow.sizing.catalogue;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * One of several options that a calculation asks for.
 *
 * @param <E>     what is chosen
 * @param id      the word used in files and text keys
 * @param options the options by their ids, in order
 * @param preset  the id taken where none is given
 */
public record Choice<E>(String id, Map<String, E> options, String preset) implements Parameter {
    /** Copies the options in their order. */
    public Choice {
        options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
        if (!options.containsKey(preset)) {
            throw new IllegalArgumentException("preset [" + preset + "] of " + id + " is none of " + options.keySet());
        }
    }

    /** A choice among the values of a type that have ids. */
    public static <E> Choice<E> of(String id, List<E> options, Function<E, String> idOf, E preset) {
        Map<String, E> byId = new LinkedHashMap<>();
        options.forEach(option -> byId.put(idOf.apply(option), option));
        return new Choice<>(id, byId, idOf.apply(preset));
    }

    /** A choice among the constants of an enum. */
    public static <E extends Enum<E>> Choice<E> of(String id, Class<E> type, Function<E, String> idOf, E preset) {
        return of(id, Arrays.asList(type.getEnumConstants()), idOf, preset);
    }

    /** Yes or no. */
    public static Choice<Boolean> yesNo(String id, boolean preset) {
        return of(id, List.of(true, false), yes -> yes ? "yes" : "no", preset);
    }
}
