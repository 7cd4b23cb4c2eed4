package fencerow.sizing.catalogue;

import fencerow.sizing.Caution;
import fencerow.sizing.OutOfRangeException;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * One calculation with all that is needed to ask for its inputs, run it and explain its result.
 *
 * <p>Ranges: every formula here rises or falls steadily with each of its inputs, so that its smallest and largest
 * values lie at corners of the input ranges; it is run at each corner.
 */
public final class Calculation {
    /** Ranged inputs in one run; each doubles the work. */
    public static final int MOST_RANGES = 10;

    private final String id;
    private final Topic topic;
    private final List<Parameter> parameters;
    private final List<Output> outputs;
    private final List<Source> sources;
    private final List<Caution> cautions;
    private final BiConsumer<Point, Outcome> formula;

    private Calculation(Builder builder, BiConsumer<Point, Outcome> formula) {
        this.id = builder.id;
        this.topic = builder.topic;
        this.parameters = List.copyOf(builder.parameters);
        this.outputs = List.copyOf(builder.outputs);
        this.sources = List.copyOf(builder.sources);
        this.cautions = List.copyOf(builder.cautions);
        this.formula = formula;
    }

    static Builder named(String id, Topic topic) {
        return new Builder(id, topic);
    }

    /** The word used in files, on the command line and in text keys. */
    public String id() {
        return id;
    }

    @Override
    public String toString() {
        return id;
    }

    /** What it is about. */
    public Topic topic() {
        return topic;
    }

    /** What it asks for, in the order of the screen. */
    public List<Parameter> parameters() {
        return parameters;
    }

    /** What it may give. */
    public List<Output> outputs() {
        return outputs;
    }

    /** Where its formula comes from; a result may name more. */
    public List<Source> sources() {
        return sources;
    }

    /** What always stands beside its numbers; a result may name more. */
    public List<Caution> cautions() {
        return cautions;
    }

    /**
     * Runs it.
     *
     * @throws OutOfRangeException      if a number is outside its bounds
     * @throws IllegalArgumentException if an id or an option is unknown, a number measures something else, or there
     *         are too many ranges
     */
    public Result run(Inputs inputs) {
        refuseUnknown(inputs);
        Map<String, Spread<Amount>> numbers = new LinkedHashMap<>();
        Map<String, String> choices = new LinkedHashMap<>();
        Outcome outcome = new Outcome();
        outcome.sources.addAll(sources);
        outcome.cautions.addAll(cautions);
        for (Parameter parameter : parameters) {
            if (parameter instanceof Measured<?> measured) {
                take(measured, inputs, numbers, outcome);
            } else if (parameter instanceof Choice<?> choice) {
                choices.put(choice.id(), inputs.choices().getOrDefault(choice.id(), choice.preset()));
            }
        }
        corners(numbers).forEach(corner -> formula.accept(new Point(corner, choices), outcome));
        return result(numbers, choices, outcome);
    }

    private void refuseUnknown(Inputs inputs) {
        List<String> known = parameters.stream().map(Parameter::id).toList();
        List<String> given = new ArrayList<>(inputs.numbers().keySet());
        given.addAll(inputs.choices().keySet());
        for (String each : given) {
            boolean choice = inputs.choices().containsKey(each);
            if (parameters.stream().noneMatch(p -> p.id().equals(each) && choice == p instanceof Choice<?>)) {
                throw new IllegalArgumentException(id + " takes no " + (choice ? "choice" : "number") + " [" + each
                        + "]; it takes " + known);
            }
        }
    }

    private static <Q extends Quantity> void take(
            Measured<Q> parameter, Inputs inputs, Map<String, Spread<Amount>> numbers, Outcome outcome) {
        Spread<Amount> given = inputs.numbers().get(parameter.id());
        if (given == null) {
            parameter.preset().ifPresent(preset -> numbers.put(parameter.id(), preset.amounts()));
            return;
        }
        for (Amount end : List.of(given.low(), given.high())) {
            if (end.dimension() != parameter.dimension()) {
                throw new IllegalArgumentException(parameter.id() + " is a " + parameter.dimension().id() + ", not a "
                        + end.dimension().id());
            }
            parameter.bounds().check(parameter.kind().apply(end));
            outcome.warnIf(!parameter.usual().contains(end), Warning.Kind.UNUSUAL_INPUT, parameter.id());
        }
        numbers.put(parameter.id(), given);
    }

    private static List<Map<String, Amount>> corners(Map<String, Spread<Amount>> numbers) {
        List<Map<String, Amount>> corners = new ArrayList<>();
        corners.add(new LinkedHashMap<>());
        int ranges = 0;
        for (Map.Entry<String, Spread<Amount>> number : numbers.entrySet()) {
            Spread<Amount> range = number.getValue();
            int before = corners.size();
            if (!range.isExact()) {
                if (++ranges > MOST_RANGES) {
                    throw new IllegalArgumentException("more than " + MOST_RANGES + " ranges; give single values");
                }
                for (int i = 0; i < before; i++) {
                    Map<String, Amount> high = new LinkedHashMap<>(corners.get(i));
                    high.put(number.getKey(), range.high());
                    corners.add(high);
                }
            }
            for (int i = 0; i < before; i++) {
                corners.get(i).put(number.getKey(), range.low());
            }
        }
        return corners;
    }

    private Result result(Map<String, Spread<Amount>> numbers, Map<String, String> choices, Outcome outcome) {
        Map<String, Spread<Amount>> amounts = new LinkedHashMap<>();
        for (Output output : outputs) {
            Spread<Amount> amount = outcome.amounts.remove(output.id());
            if (amount != null) {
                amounts.put(output.id(), amount);
            }
        }
        if (!outcome.amounts.isEmpty()) {
            throw new IllegalStateException(id + " gives " + outcome.amounts.keySet() + " without saying so");
        }
        numbers.putAll(outcome.used);
        return new Result(
                id,
                Collections.unmodifiableMap(amounts),
                List.copyOf(outcome.findings),
                List.copyOf(outcome.limits),
                Collections.unmodifiableMap(numbers),
                Collections.unmodifiableMap(choices),
                List.copyOf(outcome.sources),
                List.copyOf(outcome.cautions),
                List.copyOf(outcome.warnings));
    }

    /** Gathers what a calculation is made of. */
    static final class Builder {
        private final String id;
        private final Topic topic;
        private final List<Parameter> parameters = new ArrayList<>();
        private final List<Output> outputs = new ArrayList<>();
        private final Set<Source> sources = EnumSet.noneOf(Source.class);
        private final Set<Caution> cautions = EnumSet.noneOf(Caution.class);

        private Builder(String id, Topic topic) {
            this.id = id;
            this.topic = topic;
        }

        Builder asks(Parameter... more) {
            parameters.addAll(List.of(more));
            return this;
        }

        Builder gives(Output... more) {
            outputs.addAll(List.of(more));
            return this;
        }

        Builder from(Source... more) {
            sources.addAll(List.of(more));
            return this;
        }

        Builder beware(Caution... more) {
            cautions.addAll(List.of(more));
            return this;
        }

        Calculation by(BiConsumer<Point, Outcome> formula) {
            return new Calculation(this, formula);
        }
    }
}
