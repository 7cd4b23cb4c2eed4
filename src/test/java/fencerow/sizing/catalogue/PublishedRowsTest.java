package fencerow.sizing.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Spread;
import fencerow.wording.Quantities;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Runs every row of published and re-computed check values through the calculations' one face. */
class PublishedRowsTest {

    private static final Set<String> STANDINGS = Set.of("published", "arithmetic", "from memory", "common practice");
    private static final Quantities READER = new Quantities(Locale.US, false);

    @ParameterizedTest(name = "{0} {1}: {2} = {3}")
    @CsvFileSource(resources = "/fencerow/sizing/published-rows.csv", delimiter = '|', numLinesToSkip = 1)
    void rowComesOutAsPublished(
            String calculation, String inputs, String output, String expected, String tolerance, String standing,
            String source) {
        assertTrue(STANDINGS.contains(standing), () -> standing + " is no standing");
        Result result = run(calculation, inputs);
        boolean low = output.endsWith(".low");
        boolean high = output.endsWith(".high");
        Spread<Amount> found = result.getAmount(low || high ? output.substring(0, output.lastIndexOf('.')) : output);
        assertTrue(low || high || found.isExact(), () -> "a range came out: " + found);
        Dimension dimension = found.low().dimension();
        double allowed = READER.parse(tolerance, dimension).si();
        double actual = (high ? found.high() : found.low()).si();
        assertEquals(READER.parse(expected, dimension).si(), actual, allowed + 1e-12, source);
    }

    private static Result run(String id, String inputs) {
        Calculation calculation = Calculations.get(id);
        Inputs given = Inputs.NONE;
        for (String pair : inputs.split(";")) {
            String[] parts = pair.strip().split("=", 2);
            Parameter parameter = calculation.parameters().stream()
                    .filter(each -> each.id().equals(parts[0]))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(id + " has no " + parts[0]));
            given = parameter instanceof Measured<?> measured
                    ? given.with(parts[0], READER.parseRange(parts[1], measured.dimension()))
                    : given.choosing(parts[0], parts[1]);
        }
        return calculation.run(given);
    }
}
