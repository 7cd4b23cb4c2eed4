package fencerow.visit;

import fencerow.needs.Answers;
import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Inputs;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Output;
import fencerow.sizing.catalogue.Parameter;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Quantity;
import fencerow.terms.TopicId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One calculation as the showroom offers it.
 *
 * @param calculation what is worked out
 * @param first       ids of the inputs to show first; the others come when asked for
 * @param answer      the output to show largest; empty where the answer is no number
 * @param picture     how it is drawn, where people would rather look
 * @param topics      explainers that lead to it, and that it leads to
 * @param prefills    where its numbers come from, by input id; those of one input in the order they are tried
 */
public record Worksheet(
        Calculation calculation,
        List<String> first,
        Optional<String> answer,
        Optional<Picture> picture,
        List<TopicId> topics,
        Map<String, List<Prefill>> prefills) {
    /** Copies the collections. */
    public Worksheet {
        first = List.copyOf(first);
        topics = List.copyOf(topics);
        prefills = Collections.unmodifiableMap(new LinkedHashMap<>(prefills));
    }

    /** How a result is drawn. */
    public sealed interface Picture {
        /**
         * The answer as a curve.
         *
         * @param along the input that runs from left to right
         * @param loads whether usual loads are marked, each at the distance of its center
         */
        record Curve(String along, boolean loads) implements Picture {}

        /** What stands on the two axles, below a tractor. */
        record AxleLoads() implements Picture {}
    }

    /** Its word in files. */
    public String id() {
        return calculation.id();
    }

    /** The output shown largest. */
    public Optional<Output> answerOutput() {
        return answer.flatMap(id -> calculation.outputs().stream().filter(each -> each.id().equals(id)).findFirst());
    }

    /** Who a filled-in number comes from. */
    public enum Origin {
        /** The shopper told us. */
        ANSWER("answer"),
        /** The data sheet of the tractor in view. */
        UNIT("unit");

        private final String id;

        Origin(String id) {
            this.id = id;
        }

        /** The word used in text keys. */
        public String id() {
            return id;
        }
    }

    /**
     * What is known before anything is touched.
     *
     * @param inputs  for the calculation; allowed values only
     * @param origins of its numbers, by input id
     */
    public record Filled(Inputs inputs, Map<String, Origin> origins) {
        /** Copies the map. */
        public Filled {
            origins = Map.copyOf(origins);
        }
    }

    /** What is known of this shopper and, where one is in view, of this tractor. */
    public Filled fill(Answers answers, Optional<Model> model) {
        Inputs inputs = Inputs.NONE;
        Map<String, Origin> origins = new LinkedHashMap<>();
        for (Map.Entry<String, List<Prefill>> entry : prefills.entrySet()) {
            for (Prefill prefill : entry.getValue()) {
                Optional<Amount> known = prefill instanceof Prefill.FromAnswer answer
                        ? answer.find(answers)
                        : model.flatMap(((Prefill.FromFigure) prefill)::find);
                if (known.isPresent() && allows(entry.getKey(), known.get())) {
                    inputs = inputs.with(entry.getKey(), known.get());
                    origins.put(entry.getKey(), prefill instanceof Prefill.FromAnswer ? Origin.ANSWER : Origin.UNIT);
                    break;
                }
            }
        }
        return new Filled(inputs, origins);
    }

    private boolean allows(String input, Amount amount) {
        return findNumber(input).map(measured -> isWithin(measured, amount)).orElse(false);
    }

    private static <Q extends Quantity> boolean isWithin(Measured<Q> measured, Amount amount) {
        return measured.dimension() == amount.dimension()
                && amount.si() >= measured.bounds().min().si() && amount.si() <= measured.bounds().max().si();
    }

    /** The input of this id, where it is a number. */
    public Optional<Measured<?>> findNumber(String input) {
        for (Parameter parameter : calculation.parameters()) {
            if (parameter.id().equals(input) && parameter instanceof Measured<?> measured) {
                return Optional.of(measured);
            }
        }
        return Optional.empty();
    }
}
