package fencerow.kiosk.work;

import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Choice;
import fencerow.sizing.catalogue.Inputs;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Output;
import fencerow.sizing.catalogue.Parameter;
import fencerow.sizing.catalogue.Result;
import fencerow.terms.Amount;
import fencerow.terms.Spread;
import fencerow.visit.Worksheet;
import fencerow.wording.Bill;
import fencerow.wording.SizingWords;
import fencerow.wording.Steps;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Runs a calculation on what is known of the shopper and what they set, and puts it into words. */
final class SheetInteractor {
    private static final double SLACK = 1e-9;

    private final Worksheet sheet;
    private final Worksheet.Filled filled;
    private final SizingWords words;
    private final Texts texts;
    private final Pictures pictures;

    SheetInteractor(Worksheet sheet, Worksheet.Filled filled, SizingWords words) {
        this.sheet = sheet;
        this.filled = filled;
        this.words = words;
        this.texts = words.texts();
        this.pictures = new Pictures(sheet, words);
    }

    private Calculation calculation() {
        return sheet.calculation();
    }

    SheetModel.Card card(boolean all, Optional<String> forUnit, Library library) {
        List<SheetModel.Field> fields = Stream.concat(
                        sheet.first().stream().map(this::parameter),
                        calculation().parameters().stream()
                                .filter(each -> all && !sheet.first().contains(each.id())))
                .map(this::field)
                .toList();
        boolean more = sheet.first().size() < calculation().parameters().size();
        return new SheetModel.Card(words.ask(calculation()), forUnit, fields, more && !all, more && all,
                sheet.topics().stream()
                        .flatMap(topic -> library.find(topic).stream())
                        .map((Explainer topic) -> new SheetModel.Link(topic.title(), topic.topic()))
                        .toList());
    }

    private Parameter parameter(String id) {
        return calculation().parameters().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(sheet.id() + " has no input [" + id + "]"));
    }

    private SheetModel.Field field(Parameter parameter) {
        String name = words.input(calculation(), parameter);
        if (parameter instanceof Choice<?> choice) {
            return new SheetModel.Field.Pick(choice.id(), name, choice.options().keySet().stream()
                    .map(option -> new SheetModel.Option(option, words.option(choice, option)))
                    .toList());
        }
        return new SheetModel.Field.Count(parameter.id(), name);
    }

    /** What is filled in, and over it what the shopper set. */
    private Inputs inputs(Inputs given) {
        Inputs all = filled.inputs();
        for (Map.Entry<String, Spread<Amount>> number : given.numbers().entrySet()) {
            all = all.with(number.getKey(), number.getValue());
        }
        for (Map.Entry<String, String> choice : given.choices().entrySet()) {
            all = all.choosing(choice.getKey(), choice.getValue());
        }
        return all;
    }

    /** With a number so many steps on; it stays within what is allowed. */
    Inputs moved(Inputs given, String number, int steps) {
        if (!(parameter(number) instanceof Measured<?> measured)) {
            return given;
        }
        Optional<Spread<Amount>> now = Optional.ofNullable(inputs(given).numbers().get(number))
                .or(() -> used(given, number));
        return given.with(number, steps(measured).moved(now, steps));
    }

    /** What the calculation took where nothing was given. */
    private Optional<Spread<Amount>> used(Inputs given, String number) {
        try {
            return Optional.ofNullable(calculation().run(inputs(given)).inputs().get(number));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Steps steps(Measured<?> measured) {
        return Steps.of(measured, words.quantities().metric());
    }

    SheetModel.Shown shown(Inputs given) {
        Inputs inputs = inputs(given);
        try {
            Result result = calculation().run(inputs);
            return new SheetModel.Shown(
                    values(given, result.inputs()), answer(result, inputs), !given.equals(Inputs.NONE));
        } catch (IllegalArgumentException refusal) {
            var answer = new SheetModel.Answer(name(), "", Optional.of(words.refused(calculation(), refusal)),
                    List.of(), List.of(), List.of(), calculation().cautions().stream().map(words::caution).toList(),
                    Optional.empty());
            return new SheetModel.Shown(values(given, givenOrPreset(inputs)), answer, !given.equals(Inputs.NONE));
        }
    }

    private Map<String, Spread<Amount>> givenOrPreset(Inputs inputs) {
        Map<String, Spread<Amount>> all = new LinkedHashMap<>();
        for (Parameter parameter : calculation().parameters()) {
            if (parameter instanceof Measured<?> measured) {
                measured.preset().ifPresent(preset -> all.put(measured.id(), preset.amounts()));
            }
        }
        all.putAll(inputs.numbers());
        return all;
    }

    private Map<String, SheetModel.Value> values(Inputs given, Map<String, Spread<Amount>> used) {
        Map<String, SheetModel.Value> values = new LinkedHashMap<>();
        for (Parameter parameter : calculation().parameters()) {
            if (parameter instanceof Choice<?> choice) {
                String option = inputs(given).choices().getOrDefault(choice.id(), choice.preset());
                values.put(choice.id(), new SheetModel.Value(option, words.option(choice, option), "", true, true));
            } else if (parameter instanceof Measured<?> measured) {
                values.put(measured.id(), value(measured, given, Optional.ofNullable(used.get(measured.id()))));
            }
        }
        return values;
    }

    private SheetModel.Value value(Measured<?> measured, Inputs given, Optional<Spread<Amount>> used) {
        if (used.isEmpty()) {
            return new SheetModel.Value("", texts.get("work.unknown"), "", true, true);
        }
        Spread<Amount> now = used.get();
        boolean canLess = now.high().si() > steps(measured).least().si() + SLACK;
        boolean canMore = now.low().si() < steps(measured).most().si() - SLACK;
        return new SheetModel.Value("", words.amount(now), note(measured, given, canLess && canMore), canLess, canMore);
    }

    private String note(Measured<?> measured, Inputs given, boolean between) {
        if (!between) {
            return words.allowed(measured);
        }
        if (given.numbers().containsKey(measured.id())) {
            return texts.get("work.yours");
        }
        return Optional.ofNullable(filled.origins().get(measured.id()))
                .map(origin -> texts.get("work.origin." + origin.id()))
                .orElseGet(() -> texts.get("work.usual"));
    }

    private String name() {
        return sheet.answerOutput().map(output -> words.result(calculation(), output)).orElse("");
    }

    private SheetModel.Answer answer(Result result, Inputs inputs) {
        Optional<String> amount = sheet.answer().flatMap(result::findAmount).map(words::amount);
        List<String> says = new ArrayList<>();
        result.findings().forEach(finding -> says.add(words.finding(finding)));
        result.limits().forEach(limit -> says.add(words.limit(limit)));
        List<Bill.Line> more = new ArrayList<>();
        for (Output output : calculation().outputs()) {
            boolean shown = sheet.answer().equals(Optional.of(output.id()));
            result.findAmount(output.id()).filter(range -> !shown).ifPresent(range ->
                    more.add(new Bill.Line(words.result(calculation(), output), words.amount(range))));
        }
        return new SheetModel.Answer(name(), amount.orElse(""), Optional.empty(), says,
                result.warnings().stream().map(warning -> words.warning(calculation(), warning)).toList(), more,
                result.cautions().stream().map(words::caution).toList(), pictures.of(result, inputs));
    }

    SheetModel.Why why(Inputs given) {
        List<Bill.Line> used = new ArrayList<>();
        Map<String, SheetModel.Value> values = shown(given).values();
        List<Bill.Line> allowed = new ArrayList<>();
        for (Parameter parameter : calculation().parameters()) {
            String name = words.input(calculation(), parameter);
            Optional.ofNullable(values.get(parameter.id()))
                    .ifPresent(value -> used.add(new Bill.Line(name, value.words())));
            if (parameter instanceof Measured<?> measured) {
                allowed.add(new Bill.Line(name, words.allowed(measured)));
            }
        }
        return new SheetModel.Why(words.how(calculation()), used, allowed,
                calculation().sources().stream().map(words::source).distinct().toList());
    }
}
