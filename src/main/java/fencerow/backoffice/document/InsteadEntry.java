package fencerow.backoffice.document;

import fencerow.visit.Instead;
import fencerow.wording.InsteadWords;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A way to get one job done without the unit, beside owning what the unit needs for it. In none of the sums.
 *
 * @param job        its id
 * @param way        {@code hire}, {@code contract} or {@code other-machine}
 * @param low        dollars a year
 * @param high       likewise
 * @param owningLow  dollars that the plan costs more for the job's sake; null where there is no plan
 * @param owningHigh likewise
 * @param yearsLow   begun years after which owning has paid, at the lowest price and the dearest other way; null where
 *                   nothing is to be bought
 * @param yearsHigh  likewise, at the highest price and the cheapest other way
 * @param reason     that, as sentences
 */
public record InsteadEntry(
        String job,
        String way,
        BigDecimal low,
        BigDecimal high,
        Optional<BigDecimal> owningLow,
        Optional<BigDecimal> owningHigh,
        Optional<Long> yearsLow,
        Optional<Long> yearsHigh,
        String reason) {
    static InsteadEntry of(Instead instead, InsteadWords words) {
        Optional<Instead.Owning> owning = instead.owning();
        Optional<Instead.Years> years = owning.flatMap(Instead.Owning::years);
        return new InsteadEntry(
                instead.job().id().value(),
                instead.way().id(),
                Numbers.dollars(instead.yearly().low()),
                Numbers.dollars(instead.yearly().high()),
                owning.map(each -> Numbers.dollars(each.price().low())),
                owning.map(each -> Numbers.dollars(each.price().high())),
                years.map(Instead.Years::fewest),
                years.map(Instead.Years::most),
                words.whole(instead));
    }
}
