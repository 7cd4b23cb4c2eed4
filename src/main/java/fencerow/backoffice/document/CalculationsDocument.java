package fencerow.backoffice.document;

import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Choice;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Parameter;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What {@code size} prints without a name: the calculations.
 *
 * @param calculations by topic
 */
public record CalculationsDocument(List<CalculationEntry> calculations) {
    /**
     * One calculation.
     *
     * @param id         its name on the command line
     * @param topic      what it is about
     * @param parameters what it takes
     * @param outputs    what it may give
     */
    public record CalculationEntry(
            String id, String topic, List<ParameterEntry> parameters, List<OutputEntry> outputs) {}

    /**
     * Something it takes: a number or a choice.
     *
     * @param id      its key on the command line
     * @param number  what number; null for a choice
     * @param options what can be chosen; empty for a number
     * @param preset  the option taken where none is given; null for a number
     */
    public record ParameterEntry(
            String id, Optional<NumberEntry> number, List<String> options, Optional<String> preset) {
        private static ParameterEntry of(Parameter parameter) {
            if (parameter instanceof Choice<?> choice) {
                return new ParameterEntry(
                        choice.id(),
                        Optional.empty(),
                        List.copyOf(choice.options().keySet()),
                        Optional.of(choice.preset()));
            }
            return new ParameterEntry(
                    parameter.id(), Optional.of(NumberEntry.of((Measured<?>) parameter)), List.of(), Optional.empty());
        }
    }

    /**
     * A number it takes.
     *
     * @param measures   what is measured, such as {@code length}
     * @param unit       of the numbers here: an SI symbol, {@code 1}, {@code USD} or empty
     * @param least      the least allowed
     * @param most       the most allowed
     * @param usualLow   below this it is taken with a warning
     * @param usualHigh  above this it is taken with a warning
     * @param presetLow  taken where none is given; null where the calculation does without
     * @param presetHigh likewise; the same for a single value
     */
    public record NumberEntry(
            String measures,
            String unit,
            BigDecimal least,
            BigDecimal most,
            BigDecimal usualLow,
            BigDecimal usualHigh,
            Optional<BigDecimal> presetLow,
            Optional<BigDecimal> presetHigh) {
        private static <Q extends Quantity> NumberEntry of(Measured<Q> measured) {
            Optional<Spread<Q>> preset = measured.preset();
            return new NumberEntry(
                    measured.dimension().id(),
                    measured.dimension().symbol(),
                    Numbers.plain(measured.bounds().min().si()),
                    Numbers.plain(measured.bounds().max().si()),
                    Numbers.plain(measured.usual().low().si()),
                    Numbers.plain(measured.usual().high().si()),
                    preset.map(range -> Numbers.plain(range.low().si())),
                    preset.map(range -> Numbers.plain(range.high().si())));
        }
    }

    /**
     * Something it may give.
     *
     * @param id       its id
     * @param measures what is measured
     * @param unit     an SI symbol, {@code 1}, {@code USD} or empty
     */
    public record OutputEntry(String id, String measures, String unit) {}

    /** Writes down calculations. */
    public static CalculationsDocument of(List<Calculation> calculations) {
        return new CalculationsDocument(calculations.stream()
                .map(each -> new CalculationEntry(
                        each.id(),
                        each.topic().id(),
                        each.parameters().stream().map(ParameterEntry::of).toList(),
                        each.outputs().stream()
                                .map(output -> new OutputEntry(
                                        output.id(), output.dimension().id(), output.dimension().symbol()))
                                .toList()))
                .toList());
    }
}
