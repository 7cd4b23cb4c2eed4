package fencerow.backoffice.document;

import fencerow.match.Blocked;
import fencerow.match.Concession;
import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.match.Ranking;
import fencerow.match.Verify;
import fencerow.needs.Requirement;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.Money;
import fencerow.terms.Payment;
import fencerow.terms.PriceRange;
import fencerow.terms.StateId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.InsteadWords;
import fencerow.wording.Phrases;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One unit held against the needs.
 *
 * @param id             of the unit
 * @param model          id of its model
 * @param title          maker and model, year, condition and hours, for people
 * @param machineClass   {@code subcompact}, {@code small}, {@code mid}, {@code large} or {@code utility}
 * @param condition      {@code new}, {@code demo} or {@code used}
 * @param year           model year, where known
 * @param hours          on the meter, where known
 * @param availability   {@code in-stock}, {@code in-transit} or {@code orderable}
 * @param leadDays       until it can be here; 0 in stock
 * @param verdict        {@code ready}, {@code ready-once-equipped}, {@code look-closer}, {@code to-order} or
 *                       {@code cannot-be-made-ready}
 * @param score          0 to 100: the weighted share of wishes met as the unit stands; 100 where nothing is wished for
 * @param mustsMet       must-haves that can be met together
 * @param mustsAll       must-haves in all
 * @param wishesMet      ids of the wishes met as the unit stands, with what comes with it and what the shopper has
 * @param wishesPlanned  ids of those that what its plan adds meets too; not counted in the score
 * @param wishesUnmet    ids of the other wishes
 * @param price          what it costs
 * @param plan           what to fit and buy, cheapest; empty where nothing is needed or nothing will do
 * @param fittingMinutes fitting time of the plan, middle estimate
 * @param better         where the plan makes do with a stopgap: the cheapest plan without one, if there is one
 * @param blocked        what stands in the way where nothing will do
 * @param irreducible    ids of must-haves that cannot be met together; without any one of them the rest can
 * @param verify         features nobody has checked that matter here, most money first
 * @param bracketed      whether so much is unchecked that bounds were used instead of trying each outcome
 * @param beatenBy       id of a unit that suits at least as well for no more, and better or for less; null if none
 * @param concession     where nothing will do, or it is over the budget: the cheapest single thing to give up
 * @param figures        what it lifts, mows, needs behind and weighs on a trailer, equipped as its plan says
 * @param instead        how its jobs can be done without it, paid ways of each job before another machine
 * @param reasons        what it comes to and why, one sentence each
 */
public record UnitEntry(
        String id,
        String model,
        String title,
        String machineClass,
        String condition,
        OptionalInt year,
        OptionalInt hours,
        String availability,
        int leadDays,
        String verdict,
        int score,
        int mustsMet,
        int mustsAll,
        List<String> wishesMet,
        List<String> wishesPlanned,
        List<String> wishesUnmet,
        Price price,
        List<PlanLine> plan,
        int fittingMinutes,
        Optional<List<PlanLine>> better,
        List<BlockedItem> blocked,
        List<String> irreducible,
        List<Unchecked> verify,
        boolean bracketed,
        Optional<String> beatenBy,
        Optional<ConcessionEntry> concession,
        List<FigureEntry> figures,
        List<InsteadEntry> instead,
        List<String> reasons) {
    /**
     * Dollars; sales tax is in none of them.
     *
     * @param asking      cash price of the machine
     * @param promo       price that goes with a promotional rate, where there is one; in none of the sums
     * @param freight     from the factory
     * @param setup       making it ready to drive
     * @param fees        paperwork and the like
     * @param outTheDoor  asking, freight, setup and fees
     * @param catchUpLow  putting right what is noted on a used machine
     * @param catchUpHigh likewise
     * @param planLow     the plan; null where there is none
     * @param planHigh    likewise
     * @param trade       what the seller allows for the shopper's own tractor
     * @param readyLow    ready to work: out the door, catch-up and plan less trade; null where there is no plan
     * @param readyMid    half way between low and high
     * @param readyHigh   likewise
     * @param overBudget  by how much {@code readyMid} is over the budget; null where it is not, or there is none
     */
    public record Price(
            BigDecimal asking,
            Optional<BigDecimal> promo,
            BigDecimal freight,
            BigDecimal setup,
            BigDecimal fees,
            BigDecimal outTheDoor,
            BigDecimal catchUpLow,
            BigDecimal catchUpHigh,
            Optional<BigDecimal> planLow,
            Optional<BigDecimal> planHigh,
            BigDecimal trade,
            Optional<BigDecimal> readyLow,
            Optional<BigDecimal> readyMid,
            Optional<BigDecimal> readyHigh,
            Optional<BigDecimal> overBudget) {
        private static Price of(Match match) {
            var asking = match.price().asking();
            PriceRange catchUp = match.price().catchUp();
            Optional<PriceRange> plan = match.findPlan().map(Plan::price);
            Optional<Payment> ready = plan.map(any -> match.price().total());
            return new Price(
                    Numbers.dollars(asking.asking()),
                    asking.promo().map(Numbers::dollars),
                    Numbers.dollars(asking.freight()),
                    Numbers.dollars(asking.setup()),
                    Numbers.dollars(asking.fees()),
                    Numbers.dollars(asking.outTheDoor()),
                    Numbers.dollars(catchUp.low()),
                    Numbers.dollars(catchUp.high()),
                    plan.map(PriceRange::low).map(Numbers::dollars),
                    plan.map(PriceRange::high).map(Numbers::dollars),
                    Numbers.dollars(match.price().trade()),
                    ready.map(Payment::low).map(Numbers::dollars),
                    ready.map(Payment::middle).map(Numbers::dollars),
                    ready.map(Payment::high).map(Numbers::dollars),
                    match.overBudget().map(Numbers::dollars));
        }
    }

    /**
     * What stands in the way of something that could have met a must-have.
     *
     * @param item      the add-on or attachment; null where nothing on sale could
     * @param of        the capability that is short in the end
     * @param rule      {@code never-on-model}, {@code factory-only}, {@code cannot-be-added}, {@code not-for-class},
     *                  {@code not-sold-here}, {@code too-many-hours}, {@code too-little}, {@code too-much},
     *                  {@code in-the-way} or
     *                  {@code not-together}
     * @param wanted    how much is needed, where that is a number
     * @param available how much the unit has or can ever have, where that is a number
     * @param unit      of both: an SI symbol, empty for counts
     * @param state     the working state it is short in; null where what is mounted makes no difference
     */
    public record BlockedItem(
            Optional<String> item,
            String of,
            String rule,
            Optional<BigDecimal> wanted,
            Optional<BigDecimal> available,
            String unit,
            Optional<String> state) {
        private static BlockedItem of(Blocked blocked) {
            return new BlockedItem(
                    blocked.item().map(ItemId::value),
                    blocked.of().value(),
                    blocked.rule().id(),
                    blocked.wanted().map(Numbers::si),
                    blocked.available().map(Numbers::si),
                    blocked.wanted().map(wanted -> wanted.dimension().symbol()).orElse(""),
                    blocked.in().map(StateId::value));
        }
    }

    /**
     * A feature nobody has checked.
     *
     * @param feature its id
     * @param low     dollars the plan costs less if it turns out well, all else at its worst
     * @param high    likewise
     * @param flips   whether it is one of the fewest features that turn {@code look-closer} into ready
     */
    public record Unchecked(String feature, BigDecimal low, BigDecimal high, boolean flips) {
        private static Unchecked of(Verify verify) {
            Money low = verify.saves().low();
            Money high = verify.saves().high();
            return new Unchecked(
                    verify.feature().value(), Numbers.dollars(low), Numbers.dollars(high), verify.flips());
        }
    }

    /**
     * The cheapest single thing to give up.
     *
     * @param dropped  id of the must-have to do without; null where it is money
     * @param raise    dollars more to spend; null where it is a must-have
     * @param readyMid dollars ready to work after it
     * @param reason   that, as a sentence
     */
    public record ConcessionEntry(
            Optional<String> dropped, Optional<BigDecimal> raise, BigDecimal readyMid, String reason) {
        private static ConcessionEntry of(Concession concession, Phrases phrases) {
            return new ConcessionEntry(
                    concession instanceof Concession.Without without
                            ? Optional.of(without.dropped().id())
                            : Optional.empty(),
                    concession instanceof Concession.Raise raise
                            ? Optional.of(Numbers.dollars(raise.by()))
                            : Optional.empty(),
                    Numbers.dollars(concession.price().middle()),
                    phrases.concession(concession));
        }
    }

    /** The entry of a match. */
    static UnitEntry of(Match match, Ranking ranking, Showroom showroom, Visit visit, Phrases phrases) {
        Catalogue catalogue = showroom.catalogue();
        Set<JobId> asked = ranking.needs().jobs();
        var words = new InsteadWords(phrases);
        Unit unit = match.unit();
        Optional<Finding.Feasible> can = Optional.of(match.finding())
                .filter(Finding.Feasible.class::isInstance)
                .map(Finding.Feasible.class::cast);
        Optional<Finding.Infeasible> cannot = Optional.of(match.finding())
                .filter(Finding.Infeasible.class::isInstance)
                .map(Finding.Infeasible.class::cast);
        return new UnitEntry(
                unit.id().value(),
                unit.model().id().value(),
                phrases.labels().unit(unit),
                unit.model().machineClass().id(),
                unit.condition().id(),
                unit.year(),
                unit.hours(),
                unit.availability().id(),
                unit.leadDays(),
                match.verdict().id(),
                match.score().percent(),
                match.score().mustsMet(),
                match.score().mustsAll(),
                ids(match.score().met()),
                ids(match.score().planned()),
                ids(match.score().unmet()),
                Price.of(match),
                can.map(Finding.Feasible::best).map(plan -> PlanLine.of(plan, catalogue, asked)).orElse(List.of()),
                can.map(Finding.Feasible::best).map(Plan::minutes).orElse(0),
                can.flatMap(Finding.Feasible::withoutStopgap).map(plan -> PlanLine.of(plan, catalogue, asked)),
                cannot.map(Finding.Infeasible::why).orElse(List.of()).stream().map(BlockedItem::of).toList(),
                ids(cannot.map(Finding.Infeasible::irreducible).orElse(List.of())),
                match.verify().stream().map(Unchecked::of).toList(),
                match.bracketed(),
                ranking.beatenBy(match).map(other -> other.unit().id().value()),
                ranking.whatIf().concession(match).map(concession -> ConcessionEntry.of(concession, phrases)),
                showroom.figures(visit, match).stream().map(FigureEntry::of).toList(),
                showroom.instead(visit, ranking, match).stream()
                        .map(each -> InsteadEntry.of(each, words))
                        .toList(),
                UnitReasons.of(match, ranking, phrases));
    }

    private static List<String> ids(List<Requirement> requirements) {
        return requirements.stream().map(Requirement::id).toList();
    }
}
