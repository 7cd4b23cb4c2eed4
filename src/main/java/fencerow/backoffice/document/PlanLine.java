package fencerow.backoffice.document;

import fencerow.match.Plan;
import fencerow.stock.Attachment;
import fencerow.stock.Catalogue;
import fencerow.terms.JobId;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One item of a plan.
 *
 * @param item    the add-on or attachment
 * @param count   how many
 * @param low     dollars for all of them; 0 where the shopper has it or it comes with the unit
 * @param high    likewise
 * @param stopgap whether it only makes do
 * @param does    ids of the jobs asked for that it is the tool for
 */
public record PlanLine(
        String item, int count, BigDecimal low, BigDecimal high, boolean stopgap, List<String> does) {
    static List<PlanLine> of(Plan plan, Catalogue catalogue, Set<JobId> asked) {
        return plan.lines().stream()
                .map(line -> new PlanLine(
                        line.item().value(),
                        line.count(),
                        Numbers.dollars(line.price().low()),
                        Numbers.dollars(line.price().high()),
                        line.stopgap(),
                        catalogue.findItem(line.item())
                                .filter(Attachment.class::isInstance)
                                .map(tool -> ((Attachment) tool).does().stream())
                                .orElse(Stream.empty())
                                .filter(asked::contains)
                                .map(JobId::value)
                                .sorted()
                                .toList()))
                .toList();
    }
}
