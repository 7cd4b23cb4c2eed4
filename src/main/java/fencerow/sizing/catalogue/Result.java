package fencerow.sizing.catalogue;

import fencerow.sizing.Caution;
import fencerow.sizing.Limit;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Spread;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a calculation found, and all that a shopper may ask about it.
 *
 * @param calculation its id
 * @param amounts     by output id, in the calculation's order; ranges where inputs are ranges
 * @param findings    answers that are no numbers
 * @param limits      the rules that decided; several where it depends on where in the ranges the truth lies
 * @param inputs      the numbers used, given or preset, by parameter id
 * @param choices     the options used, by parameter id
 * @param sources     where formula and figures come from
 * @param cautions    what stands beside the number
 * @param warnings    what is suspicious
 */
public record Result(
        String calculation,
        Map<String, Spread<Amount>> amounts,
        List<Finding> findings,
        List<Limit> limits,
        Map<String, Spread<Amount>> inputs,
        Map<String, String> choices,
        List<Source> sources,
        List<Caution> cautions,
        List<Warning> warnings) {

    /**
     * The amount of an output.
     *
     * @throws IllegalArgumentException if the calculation gave none of that name
     */
    public Spread<Amount> getAmount(String output) {
        return findAmount(output).orElseThrow(() -> new IllegalArgumentException(
                calculation + " gave no [" + output + "]; it gave " + amounts.keySet()));
    }

    /** The amount of an output, where there is one. */
    public Optional<Spread<Amount>> findAmount(String output) {
        return Optional.ofNullable(amounts.get(output));
    }
}
