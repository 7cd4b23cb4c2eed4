package fencerow.visit;

import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.sizing.Limit;
import fencerow.sizing.catalogue.Inputs;
import fencerow.sizing.catalogue.Result;
import fencerow.stock.Catalogue;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Effect;
import fencerow.terms.Fact;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import fencerow.terms.ItemId;
import fencerow.terms.Mass;
import fencerow.terms.QuestionId;
import fencerow.terms.Spread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Something worked out for one unit and one shopper, equipped as its plan says.
 *
 * @param kind    what it is
 * @param given   what was set beyond the unit's figures and the shopper's answers
 * @param amount  the result
 * @param limits  the rules that decided
 * @param missing why there is no result
 * @param rating  the shopper's own rating to hold it against, where they told one
 * @param fuller  what weight behind would bring, where it lifts less than its hydraulics could
 */
public record UnitFigure(
        Kind kind,
        Inputs given,
        Optional<Spread<Amount>> amount,
        List<Limit> limits,
        Optional<Missing> missing,
        Optional<Amount> rating,
        Optional<Fuller> fuller) {
    private static final FeatureId LOADER = new FeatureId("loader");
    private static final CapabilityId MOWING_WIDTH = new CapabilityId("mowing-width");
    private static final CapabilityId HITCH_WEIGHT = new CapabilityId("hitch-weight");
    private static final QuestionId TRAILER = new QuestionId("trailer-capacity");

    /** Copies the limits. */
    public UnitFigure {
        limits = List.copyOf(limits);
    }

    /**
     * All of a loader's lift, with more weight behind.
     *
     * @param weight on the hitch, besides what is there
     * @param lifts  with that
     * @param held   whether the hitch can hold it, as far as its lift is known
     */
    public record Fuller(Amount weight, Amount lifts, boolean held) {}

    /** What is worked out, by which calculation and from which of its inputs at least. */
    public enum Kind {
        /** At a pallet's center, with the weight behind that the plan brings. */
        LIFTS("lifts", "loader-payload", "usable", Set.of("lift-at-pins", "front-axle", "rear-axle", "wheelbase",
                "pins-ahead-of-front-axle", "loader-mass")),
        /** An hour, with the mower it has or gets. */
        MOWS("mows", "work-time", "rate", Set.of()),
        /** Behind, for the shopper's heaviest load. */
        BALLAST("ballast", "rear-ballast", "ballast-on-hitch", Set.of("front-axle", "rear-axle", "wheelbase",
                "ahead-of-front-axle", "behind-rear-axle")),
        /** On a trailer, loader and all. */
        HAULS("hauls", "trailer-load", "load-on-trailer", Set.of("tractor"));

        private final String id;
        private final String calculation;
        private final String output;
        private final Set<String> needed;

        Kind(String id, String calculation, String output, Set<String> needed) {
            this.id = id;
            this.calculation = calculation;
            this.output = output;
            this.needed = needed;
        }

        /** The word used in text keys. */
        public String id() {
            return id;
        }

        /** The inputs that must be known of a machine. */
        Set<String> needed() {
            return needed;
        }

        /** The calculation it comes from. */
        public String calculation() {
            return calculation;
        }
    }

    /** Why there is no result. */
    public enum Missing {
        /** The data sheet lacks a figure. */
        FIGURES("figures"),
        /** There is no loader on it, or nobody has looked. */
        LOADER("loader"),
        /** There is no mower on it or in its plan. */
        MOWER("mower"),
        /** The shopper has not told their heaviest load. */
        LOAD("load");

        private final String id;

        Missing(String id) {
            this.id = id;
        }

        /** The word used in text keys. */
        public String id() {
            return id;
        }
    }

    /** All of them, of the calculations that the showroom offers. */
    static List<UnitFigure> of(Match match, Answers answers, Workbook workbook, Catalogue catalogue) {
        return Arrays.stream(Kind.values())
                .flatMap(kind -> workbook.find(kind.calculation).stream()
                        .map(sheet -> of(kind, sheet, match, answers, catalogue)))
                .toList();
    }

    private static UnitFigure of(Kind kind, Worksheet sheet, Match match, Answers answers, Catalogue catalogue) {
        Worksheet.Filled filled = sheet.fill(answers, Optional.of(match.unit().model()));
        List<Effect> effects = effects(match, catalogue);
        boolean loader = effects.stream().anyMatch(each -> each.of().equals(CapabilityId.of(LOADER)));
        Optional<Amount> width = most(effects, MOWING_WIDTH);
        Optional<Missing> missing = Optional.empty();
        Inputs given = Inputs.NONE;
        switch (kind) {
            case LIFTS -> {
                missing = loader ? missing : Optional.of(Missing.LOADER);
                given = most(effects, HITCH_WEIGHT).map(weight -> Inputs.NONE.with("hitch-ballast", weight))
                        .orElse(given);
            }
            case MOWS -> {
                missing = width.isPresent() ? missing : Optional.of(Missing.MOWER);
                given = width.map(each -> Inputs.NONE.with("width", each)).orElse(given);
            }
            case BALLAST -> missing = filled.origins().containsKey("front-load")
                    ? missing
                    : Optional.of(Missing.LOAD);
            case HAULS -> given = loader ? given : Inputs.NONE.with("loader", new Mass(0));
        }
        if (!filled.inputs().numbers().keySet().containsAll(kind.needed)) {
            missing = Optional.of(Missing.FIGURES);
        }
        if (missing.isPresent()) {
            return without(kind, given, missing);
        }
        return found(kind, sheet, filled, given, answers, match.unit().model());
    }

    private static UnitFigure without(Kind kind, Inputs given, Optional<Missing> missing) {
        return new UnitFigure(kind, given, Optional.empty(), List.of(), missing, Optional.empty(),
                Optional.empty());
    }

    private static UnitFigure found(
            Kind kind, Worksheet sheet, Worksheet.Filled filled, Inputs given, Answers answers, Model model) {
        Inputs all = filled.inputs();
        for (var number : given.numbers().entrySet()) {
            all = all.with(number.getKey(), number.getValue());
        }
        try {
            Result result = sheet.calculation().run(all);
            Optional<Amount> rating = kind == Kind.HAULS
                    ? answers.find(TRAILER)
                            .filter(Answer.Measured.class::isInstance)
                            .map(answer -> ((Answer.Measured) answer).amount())
                    : Optional.empty();
            return new UnitFigure(
                    kind, given, result.findAmount(kind.output), result.limits(), Optional.empty(), rating,
                    kind == Kind.LIFTS ? fuller(result, model) : Optional.empty());
        } catch (IllegalArgumentException e) {
            return without(kind, given, Optional.of(Missing.FIGURES)); // a data sheet no formula holds for
        }
    }

    private static Optional<Fuller> fuller(Result result, Model model) {
        Amount weight = result.getAmount("further-ballast").high();
        double there = Optional.ofNullable(result.inputs().get("hitch-ballast"))
                .map(range -> range.high().si())
                .orElse(0.0);
        double hanging = there + weight.si();
        boolean held = model.findFigure(Figure.HITCH_LIFT).stream().allMatch(most -> hanging <= most.si());
        return weight.si() > 0
                ? Optional.of(new Fuller(weight, result.getAmount("hydraulic").low(), held))
                : Optional.empty();
    }

    /** What the unit's own equipment, what comes with it and its plan do. */
    private static List<Effect> effects(Match match, Catalogue catalogue) {
        List<Effect> effects = new ArrayList<>();
        catalogue.features().forEach(feature -> {
            if (match.unit().fact(feature.id()) instanceof Fact.Fitted fitted) {
                effects.addAll(feature.effects(fitted.kind()));
            }
        });
        Stream<ItemId> items = Stream.concat(
                match.unit().bundled().stream(),
                match.findPlan().stream().flatMap(plan -> plan.lines().stream()).map(Plan.Line::item));
        items.distinct().flatMap(id -> catalogue.findItem(id).stream())
                .forEach(item -> effects.addAll(catalogue.effects(item)));
        return effects;
    }

    private static Optional<Amount> most(List<Effect> effects, CapabilityId of) {
        return effects.stream()
                .filter(each -> each.of().equals(of))
                .map(Effect::amount)
                .max(Comparator.comparingDouble(Amount::si));
    }
}
