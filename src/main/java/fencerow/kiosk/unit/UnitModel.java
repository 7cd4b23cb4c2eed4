package fencerow.kiosk.unit;

import fencerow.explainers.Drawing;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.PartMark;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.matching.UnitCard;
import fencerow.terms.TopicId;
import fencerow.wording.Bill;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One unit as it is shown.
 *
 * @param card     name, price and reasons
 * @param says     what the verdict means
 * @param bill     the price, line by line
 * @param notes    about the price
 * @param plan     how it is made ready, where it can be
 * @param causes   why it cannot, where it cannot
 * @param instead  how jobs can be done without it, by job
 * @param drawing  the drawn tractor with what is on this one; empty where none is shipped
 * @param figures  its data sheet
 * @param sums     what calculations say of it
 * @param stops    what is on it, in walk-around order
 * @param cautions of the work it is to do
 */
record UnitModel(
        UnitCard card,
        String says,
        Bill bill,
        List<String> notes,
        Optional<PlanPart> plan,
        List<String> causes,
        List<Bill.Line> instead,
        Optional<Drawn> drawing,
        List<Bill.Line> figures,
        List<SumLine> sums,
        List<StopPart> stops,
        List<String> cautions) {
    UnitModel {
        notes = List.copyOf(notes);
        causes = List.copyOf(causes);
        instead = List.copyOf(instead);
        figures = List.copyOf(figures);
        sums = List.copyOf(sums);
        stops = List.copyOf(stops);
        cautions = List.copyOf(cautions);
    }

    /**
     * The drawn tractor.
     *
     * @param alternative what it shows, in words
     * @param parts       the name of each part that is a feature, with how it stands, by its topic
     * @param marks       how each of them is picked out
     * @param legend      what the ways of picking out mean, those that occur
     */
    record Drawn(
            Drawing drawing,
            String alternative,
            Map<String, String> parts,
            Map<String, PartMark> marks,
            List<LegendLine> legend) {
        Drawn {
            parts = Map.copyOf(parts);
            marks = Map.copyOf(marks);
            legend = List.copyOf(legend);
        }
    }

    /** One way of picking out, and what it means. */
    record LegendLine(PartMark mark, String words) {}

    /**
     * What a calculation says of it.
     *
     * @param value the result, or why there is none
     * @param notes the rules that decided
     * @param place the calculation, filled in with its figures
     */
    record SumLine(String name, String value, List<String> notes, Place place) {
        SumLine {
            notes = List.copyOf(notes);
        }
    }

    /**
     * How it is made ready.
     *
     * @param lines  what to fit and buy; empty if nothing
     * @param better what is better for more money, where something is
     * @param hours  of fitting, in words; empty if none
     */
    record PlanPart(List<PlanLine> lines, Optional<String> better, Optional<String> hours) {
        PlanPart {
            lines = List.copyOf(lines);
        }
    }

    /** One thing to fit or buy: its price, and what to know about it. */
    record PlanLine(String words, String price, Optional<String> about) {}

    /** What is at one stop of the walk around the tractor. */
    record StopPart(String name, List<FeatureLine> lines) {
        StopPart {
            lines = List.copyOf(lines);
        }
    }

    /**
     * How one feature stands.
     *
     * @param topic   the explainer that tells more
     * @param matters whether the shopper's work or wishes touch it
     */
    record FeatureLine(TopicId topic, String name, Sign.Kind sign, String standing, boolean matters) {}
}
