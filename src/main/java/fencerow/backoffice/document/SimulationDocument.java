package fencerow.backoffice.document;

import fencerow.match.Simulation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * How many questions made-up shoppers were asked, and whether fewer questions found the same tractors.
 *
 * @param shoppers     how many there were
 * @param seed         the same one makes up the same shoppers
 * @param askedLeast   fewest questions any was asked
 * @param askedMedian  half were asked no more than this
 * @param askedMean    to the tenth
 * @param askedMost    most questions any was asked
 * @param applyingMean questions that apply to a shopper's answers, to the tenth
 * @param sameFirst    shoppers whose first three tractors were those of all their answers, in the same order
 */
public record SimulationDocument(
        int shoppers,
        long seed,
        int askedLeast,
        int askedMedian,
        BigDecimal askedMean,
        int askedMost,
        BigDecimal applyingMean,
        int sameFirst) {
    /**
     * Sums up.
     *
     * @param shoppers at least one
     */
    public static SimulationDocument of(List<Simulation.Shopper> shoppers, long seed) {
        int[] asked = shoppers.stream().mapToInt(Simulation.Shopper::asked).sorted().toArray();
        return new SimulationDocument(
                shoppers.size(),
                seed,
                asked[0],
                asked[(asked.length - 1) / 2],
                mean(shoppers.stream().mapToInt(Simulation.Shopper::asked).average().orElse(0)),
                asked[asked.length - 1],
                mean(shoppers.stream().mapToInt(Simulation.Shopper::applying).average().orElse(0)),
                (int) shoppers.stream().filter(Simulation.Shopper::sameFirst).count());
    }

    private static BigDecimal mean(double value) {
        return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
    }
}
