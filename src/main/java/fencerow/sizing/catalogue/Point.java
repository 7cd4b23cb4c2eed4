package fencerow.sizing.catalogue;

import fencerow.terms.Amount;
import fencerow.terms.Quantity;
import java.util.Map;
import java.util.Optional;

/** One value for every parameter: what a calculation's formula sees. */
final class Point {
    private final Map<String, Amount> numbers;
    private final Map<String, String> choices;

    Point(Map<String, Amount> numbers, Map<String, String> choices) {
        this.numbers = numbers;
        this.choices = choices;
    }

    /** The value of a parameter that has a preset. */
    <Q extends Quantity> Q get(Measured<Q> parameter) {
        return find(parameter).orElseThrow(() -> new IllegalArgumentException(parameter.id() + " is missing; give it"));
    }

    /** The value of a parameter that may be left out. */
    <Q extends Quantity> Optional<Q> find(Measured<Q> parameter) {
        return Optional.ofNullable(numbers.get(parameter.id())).map(parameter.kind());
    }

    /** The number of a count. */
    int count(Measured<Amount> parameter) {
        return Math.toIntExact(Math.round(get(parameter).si()));
    }

    /** The chosen option. */
    <E> E get(Choice<E> choice) {
        String id = choices.getOrDefault(choice.id(), choice.preset());
        return Optional.ofNullable(choice.options().get(id))
                .orElseThrow(() -> new IllegalArgumentException(
                        choice.id() + " [" + id + "] is unknown; give one of " + choice.options().keySet()));
    }
}
