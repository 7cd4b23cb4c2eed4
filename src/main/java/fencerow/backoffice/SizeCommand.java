package fencerow.backoffice;

import fencerow.backoffice.document.CalculationsDocument;
import fencerow.backoffice.document.SizeDocument;
import fencerow.sizing.OutOfRangeException;
import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Calculations;
import fencerow.sizing.catalogue.Choice;
import fencerow.sizing.catalogue.Inputs;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Parameter;
import fencerow.sizing.catalogue.Result;
import fencerow.wording.Quantities;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Works out loads, ballast, power, hauling, snow, money and more by published formulas. */
@Command(name = "size", mixinStandardHelpOptions = true,
        description = "Works out loads, ballast, power, hauling, snow and money; without a NAME, lists what it can.",
        footer = {"", "Example: fencerow size ground-covered width='60 in' speed='4 mph'",
            "Values carry their unit; '3 to 5 mph' is a range."})
final class SizeCommand implements Callable<Integer> {
    private final FencerowCommand top;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The calculation.")
    private Optional<String> name = Optional.empty();

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "KEY=VALUE",
            description = "What is given; everything else takes its preset.")
    private Map<String, String> given = new LinkedHashMap<>();

    SizeCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException {
        Premises premises = top.open();
        if (name.isEmpty()) {
            var document = CalculationsDocument.of(Calculations.all());
            top.print(document, () -> SizeText.of(Calculations.all(), premises));
            return FencerowCommand.FINE;
        }
        Result result = run(name.get(), premises);
        var document = SizeDocument.of(result, premises.texts());
        top.print(document, () -> SizeText.of(result, document, premises));
        return FencerowCommand.FINE;
    }

    private Result run(String calculationId, Premises premises) throws WrongUseException {
        try {
            Calculation calculation = Calculations.get(calculationId);
            return calculation.run(inputs(calculation, premises.quantities()));
        } catch (OutOfRangeException e) {
            throw new WrongUseException("[" + e.what() + "] cannot be " + premises.quantities().show(e.value())
                    + "; give " + premises.quantities().show(e.min()) + " to " + premises.quantities().show(e.max()));
        } catch (IllegalArgumentException e) {
            throw new WrongUseException(String.valueOf(e.getMessage()));
        }
    }

    private Inputs inputs(Calculation calculation, Quantities quantities) {
        Inputs inputs = Inputs.NONE;
        for (Map.Entry<String, String> each : given.entrySet()) {
            Optional<Parameter> parameter = calculation.parameters().stream()
                    .filter(any -> any.id().equals(each.getKey()))
                    .findFirst();
            if (parameter.isEmpty()) {
                List<String> known = calculation.parameters().stream().map(Parameter::id).toList();
                throw new IllegalArgumentException(calculation.id() + " takes no [" + each.getKey() + "]; it takes "
                        + String.join(", ", known));
            }
            inputs = with(inputs, parameter.get(), each.getValue(), quantities);
        }
        return inputs;
    }

    private static Inputs with(Inputs inputs, Parameter parameter, String text, Quantities quantities) {
        if (parameter instanceof Measured<?> measured) {
            try {
                return inputs.with(parameter.id(), quantities.parseRange(text, measured.dimension()));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("[" + parameter.id() + "]: " + e.getMessage(), e);
            }
        }
        Choice<?> choice = (Choice<?>) parameter;
        if (!choice.options().containsKey(text)) {
            throw new IllegalArgumentException("[" + parameter.id() + "] cannot be [" + text + "]; use one of "
                    + String.join(", ", choice.options().keySet()));
        }
        return inputs.choosing(parameter.id(), text);
    }
}
