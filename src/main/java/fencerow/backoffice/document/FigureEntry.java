package fencerow.backoffice.document;

import fencerow.sizing.Limit;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Spread;
import fencerow.visit.UnitFigure;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Something worked out for one unit and this shopper, equipped as its plan says. For choosing and asking: the
 * operator's manual and the plate decide what is lifted and carried.
 *
 * @param what        {@code lifts}: at a pallet's center, by hydraulics and balance; {@code mows}: area in a time;
 *                    {@code ballast}: mass behind for the shopper's heaviest load; {@code hauls}: mass on a trailer
 * @param calculation that it comes from, as {@code size} knows it
 * @param low         at least; null where it is not known
 * @param high        at most; null where it is not known
 * @param unit        an SI symbol
 * @param limits      the rules that decided
 * @param missing     why it is not known: {@code figures} the data sheet lacks, no {@code loader}, no {@code mower}, or
 *                    the shopper told no {@code load}; else null
 * @param furtherBallast mass on the hitch, besides what is there, with which a loader uses all of its lift; null where
 *                    it does already
 * @param withBallast mass that it lifts then; likewise
 */
public record FigureEntry(
        String what,
        String calculation,
        Optional<BigDecimal> low,
        Optional<BigDecimal> high,
        String unit,
        List<String> limits,
        Optional<String> missing,
        Optional<BigDecimal> furtherBallast,
        Optional<BigDecimal> withBallast) {
    static FigureEntry of(UnitFigure figure) {
        Optional<Spread<Amount>> amount = figure.amount();
        return new FigureEntry(
                figure.kind().id(),
                figure.kind().calculation(),
                amount.map(Spread::low).map(Numbers::si),
                amount.map(Spread::high).map(Numbers::si),
                amount.map(Spread::low).map(Amount::dimension).map(Dimension::symbol).orElse(""),
                figure.limits().stream().map(Limit::id).toList(),
                figure.missing().map(UnitFigure.Missing::id),
                figure.fuller().map(UnitFigure.Fuller::weight).map(Numbers::si),
                figure.fuller().map(UnitFigure.Fuller::lifts).map(Numbers::si));
    }
}
