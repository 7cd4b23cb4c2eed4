package fencerow.wording;

import fencerow.sizing.Caution;
import fencerow.sizing.Limit;
import fencerow.sizing.OutOfRangeException;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Choice;
import fencerow.sizing.catalogue.Finding;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Output;
import fencerow.sizing.catalogue.Parameter;
import fencerow.sizing.catalogue.Topic;
import fencerow.terms.Amount;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import fencerow.visit.UnitFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Calculations and what they find, in words.
 *
 * @param texts      the words of the language
 * @param quantities shows amounts in the shopper's units
 */
public record SizingWords(Texts texts, Quantities quantities) {
    /** Tire sizes are written alike on every sidewall; they need no words. */
    private static final String TIRE = "tire";

    /** In US customary or metric units. */
    public static SizingWords of(Texts texts, boolean metric) {
        return new SizingWords(texts, new Quantities(texts.locale(), metric));
    }

    /** The keys of all words that a calculation cannot be shown without. */
    public static List<String> keys(Calculation calculation) {
        List<String> keys = new ArrayList<>();
        keys.add("work.area." + calculation.topic().id());
        keys.add(own(calculation) + "ask");
        keys.add(own(calculation) + "how");
        for (Parameter parameter : calculation.parameters()) {
            keys.add("work.input." + parameter.id());
            if (parameter instanceof Choice<?> choice && !choice.id().equals(TIRE)) {
                choice.options().keySet().forEach(option -> keys.add(optionKey(choice, option)));
            }
        }
        calculation.outputs().forEach(output -> keys.add("work.result." + output.id()));
        return keys;
    }

    private static String own(Calculation calculation) {
        return "work.calculation." + calculation.id() + ".";
    }

    private static String optionKey(Choice<?> choice, String option) {
        return "work.option." + choice.id() + "." + option;
    }

    /** The name of an area. */
    public String area(Topic topic) {
        return texts.get("work.area." + topic.id());
    }

    /** The plain question that a calculation answers. */
    public String ask(Calculation calculation) {
        return texts.get(own(calculation) + "ask");
    }

    /** Its formula in words. */
    public String how(Calculation calculation) {
        return texts.get(own(calculation) + "how");
    }

    /** The name of an input; a calculation may have its own. */
    public String input(Calculation calculation, Parameter parameter) {
        return inputName(calculation, parameter.id())
                .orElseGet(() -> texts.get("work.input." + parameter.id()));
    }

    private Optional<String> inputName(Calculation calculation, String id) {
        return texts.find(own(calculation) + "input." + id).or(() -> texts.find("work.input." + id));
    }

    /** One of the options of an input. */
    public String option(Choice<?> choice, String option) {
        return choice.id().equals(TIRE) ? option : texts.get(optionKey(choice, option));
    }

    /** The name of an output; a calculation may have its own. */
    public String result(Calculation calculation, Output output) {
        return resultName(calculation, output.id()).orElseGet(() -> texts.get("work.result." + output.id()));
    }

    private Optional<String> resultName(Calculation calculation, String id) {
        return texts.find(own(calculation) + "result." + id).or(() -> texts.find("work.result." + id));
    }

    /** A range, or an amount where both ends are the same. */
    public String amount(Spread<Amount> range) {
        return quantities.show(range);
    }

    /** What is allowed, from least to most. */
    public <Q extends Quantity> String allowed(Measured<Q> measured) {
        return texts.get("work.allowed", Map.of(
                "low", quantities.show(measured.bounds().min().amount()),
                "high", quantities.show(measured.bounds().max().amount())));
    }

    /** The rule that decided. */
    public String limit(Limit limit) {
        return texts.get("sizing.limit." + limit.id());
    }

    /** What is suspicious, and about what. */
    public String warning(Calculation calculation, Warning warning) {
        String text = texts.get("sizing.warning." + warning.kind().id());
        return inputName(calculation, warning.about())
                .or(() -> resultName(calculation, warning.about()))
                .map(about -> texts.get("work.warning", Map.of("about", about, "text", text)))
                .orElse(text);
    }

    /** What stands beside the number. */
    public String caution(Caution caution) {
        return texts.get("sizing.caution." + caution.id());
    }

    /** An answer that is no number. */
    public String finding(Finding finding) {
        return texts.get("work.finding." + finding.about() + "." + finding.id());
    }

    /** A publication and how good it is; one of the two where they say the same. */
    public String source(Source source) {
        String standing = texts.get("sizing.standing." + source.standing().id());
        return source.citation().equalsIgnoreCase(standing)
                ? standing
                : texts.get("work.source", Map.of("citation", source.citation(), "standing", standing));
    }

    /** What a unit's figure is called. */
    public String figure(UnitFigure figure) {
        return texts.get("work.unit." + figure.kind().id());
    }

    /** What it comes to, or why that is not known. */
    public String figureValue(UnitFigure figure) {
        if (figure.amount().isEmpty()) {
            return figure.missing().map(why -> texts.get("work.unit.no-" + why.id()))
                    .orElseGet(() -> texts.get("work.unknown"));
        }
        String amount = amount(figure.amount().get());
        return figure.kind() == UnitFigure.Kind.MOWS
                ? texts.get("work.unit.an-hour", Map.of("amount", amount))
                : amount;
    }

    /** The rules that decided, and how it stands against the shopper's own rating. */
    public List<String> figureNotes(UnitFigure figure) {
        List<String> notes = new ArrayList<>(figure.limits().stream().map(this::limit).toList());
        Optional.ofNullable(figure.given().numbers().get("hitch-ballast")).ifPresent(weight ->
                notes.add(texts.get("work.unit.with-ballast", Map.of("amount", amount(weight)))));
        figure.rating().ifPresent(rating -> figure.amount().ifPresent(amount -> notes.add(texts.get(
                amount.high().si() <= rating.si() ? "work.unit.within" : "work.unit.over",
                Map.of("rating", quantities.show(rating))))));
        return notes;
    }

    /** Why a value was refused, and what is allowed. */
    public String refused(Calculation calculation, IllegalArgumentException refusal) {
        if (refusal instanceof OutOfRangeException range) {
            return inputName(calculation, range.what())
                    .map(name -> texts.get("work.refused", Map.of(
                            "name", name,
                            "value", quantities.show(range.value()),
                            "low", quantities.show(range.min()),
                            "high", quantities.show(range.max()))))
                    .orElseGet(() -> texts.get("work.refused-together"));
        }
        return texts.get("work.refused-together");
    }
}
