package fencerow.kiosk;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.needs.Answer;
import fencerow.quiz.Belief;
import fencerow.stock.AskingPrice;
import fencerow.stock.Condition;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.FeatureId;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import fencerow.visit.SecondQuote;
import fencerow.visit.Visit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The screens of matching, quiz and list in the states that the walk looks at. */
final class MatchPlaces {
    private static final double FOOT = 0.3048;

    private MatchPlaces() {}

    static List<WalkPlace> all() {
        return List.of(
                at("ask-jobs", Visit.NEW, Place.Questions.NEXT),
                at("ask-one", longDrive(), question("cab")),
                at("ask-several", longDrive(), question("comfort")),
                at("ask-amount", longDrive(), question("budget")),
                at("ask-amount-open", longDrive(), question("gate-width")),
                at("answers", longDrive(), Place.AllAnswers.TOP),
                at("results-new", Visit.NEW, Place.Results.TOP),
                at("results", longDrive(), Place.Results.TOP),
                new WalkPlace("results-trade-in", frame -> open(frame, longDrive(), Place.Results.TOP),
                        shown -> shown.touch(shown.frame().say("trade.open"))),
                at("results-all-end", longDrive(), new Place.Results(true, 1)),
                at("results-none", nothingFits(), Place.Results.TOP),
                at("unit-cannot", nothingFits(), unit("n-203", 0)),
                at("unit-ready", longDrive(), unit("n-203", 0)),
                at("unit-ready-drawing", longDrive(), unit("n-203", 0.3)),
                at("unit-ready-middle", longDrive(), unit("n-203", 0.5)),
                at("unit-ready-end", longDrive(), unit("n-203", 1)),
                at("compare", pinned(), Place.SideBySide.TOP),
                at("compare-middle", pinned(), new Place.SideBySide(0.4)),
                at("compare-end", pinned(), new Place.SideBySide(1)),
                at("quote-first", longDrive(), Place.SecondQuote.FIRST),
                at("quote-machine", told(), Place.SecondQuote.FIRST),
                at("quote-price", told(), Place.SecondQuote.of(Place.SecondQuote.Step.PRICE)),
                at("quote-equipment", told(), Place.SecondQuote.of(Place.SecondQuote.Step.EQUIPMENT)),
                at("quote-beside", told(), Place.SecondQuote.of(Place.SecondQuote.Step.BESIDE)),
                at("quote-explained", explained(), Place.SecondQuote.of(Place.SecondQuote.Step.BESIDE)),
                at("unit-traded", explained(), unit("n-203", 0.2)),
                at("quiz", longDrive(), Place.Quiz.NEXT),
                at("quiz-check", longDrive(), quiz("check-mid-pto")),
                at("quiz-wrong", wrong(), quiz("quick-attach")),
                at("quiz-right", wrong(), quiz("mid-pto")),
                at("quiz-unsure", wrong(), quiz("rear-remotes")),
                at("outcome", wrong(), Place.QuizSummary.TOP),
                at("list", wrong().toggleLine("quick-attach"), Place.ListPreview.TOP),
                at("list-new", Visit.NEW, Place.ListPreview.TOP),
                at("list-end", wrong(), new Place.ListPreview(1)),
                at("print", wrong(), new Place.Print()),
                new WalkPlace("print-code", frame -> open(frame, wrong(), new Place.Print()),
                        shown -> shown.touch(shown.frame().say("print.code.make"))),
                new WalkPlace("print-done", frame -> open(frame, wrong(), new Place.Print()),
                        shown -> shown.touch(shown.frame().say("print.save"))),
                at("guide", longDrive(), new Place.Guide(Visit.NEW, 0)),
                at("guide-end", pinned(), new Place.Guide(Visit.NEW, 1)));
    }

    /** Asks for a front blower that goes through a garden gate. */
    private static Visit nothingFits() {
        return measure(longDrive(), "gate-width", new Amount(Dimension.LENGTH, 3 * FOOT));
    }

    private static Visit pinned() {
        return longDrive().togglePin(new UnitId("n-203")).togglePin(new UnitId("n-206"));
    }

    private static Visit told() {
        SecondQuote quote = SecondQuote.of(MachineClass.SUBCOMPACT, Condition.USED)
                .withHours(OptionalInt.of(250))
                .withPrice(new AskingPrice(Money.ofDollars(14_900L), Optional.empty(), Money.ofDollars(500L),
                        Money.ZERO, Money.ZERO, Optional.of(Money.ofDollars(2_500L))))
                .with(new FeatureId("mid-pto"), Optional.of(true))
                .with(new FeatureId("quick-attach"), Optional.of(false));
        return longDrive()
                .offered(Money.ofDollars(3_200L))
                .told(Optional.of(quote.unit(Rooms.premises().showroom().catalogue())));
    }

    /** Another seller's tractor that can do the work, too. */
    private static Visit explained() {
        SecondQuote quote = SecondQuote.of(MachineClass.SMALL, Condition.NEW)
                .withPrice(new AskingPrice(Money.ofDollars(21_300L), Optional.empty(), Money.ofDollars(400L),
                        Money.ZERO, Money.ofDollars(250L), Optional.of(Money.ofDollars(4_000L))))
                .with(new FeatureId("mid-pto"), Optional.of(true))
                .with(new FeatureId("quick-attach"), Optional.of(true));
        return choose(Visit.NEW, "jobs", "mow-lawn", "keep-drive")
                .offered(Money.ofDollars(3_200L))
                .told(Optional.of(quote.unit(Rooms.premises().showroom().catalogue())));
    }

    private static Place quiz(String id) {
        return Place.Quiz.of(new QuestionId(id));
    }

    private static Visit wrong() {
        return longDrive()
                .believed(new QuestionId("quick-attach"), new Belief(Optional.of(new OptionId("comes-with-it")), true))
                .believed(new QuestionId("mid-pto"), Belief.of(new OptionId("cannot-be-added")))
                .believed(new QuestionId("liquid-ballast"), Belief.of(new OptionId("comes-with-it")))
                .believed(new QuestionId("rear-remotes"), Belief.NOT_SURE);
    }

    private static Place unit(String id, double scroll) {
        return new Place.UnitSheet(new UnitId(id), scroll);
    }

    private static Place question(String id) {
        return new Place.Questions(Optional.of(new QuestionId(id)), Set.of(), false, 0);
    }

    static WalkPlace at(String name, Visit visit, Place place) {
        return new WalkPlace(name, frame -> open(frame, visit, place));
    }

    private static void open(Frame frame, Visit visit, Place place) {
        frame.change(fresh -> visit);
        frame.go(place);
    }

    /** A newcomer with two acres, a long gravel drive and snow every winter. */
    static Visit longDrive() {
        return choose(choose(choose(measure(measure(choose(Visit.NEW,
                        "jobs", "clear-snow", "keep-drive", "mow-lawn"),
                        "door-height", new Amount(Dimension.LENGTH, 8 * FOOT)),
                        "budget", new Amount(Dimension.MONEY, 18_000)),
                        "snow-tool", "front-blower"), "drive-length", "long"), "winter-low", "deep-cold");
    }

    private static Visit choose(Visit visit, String question, String... options) {
        return visit.answered(new QuestionId(question),
                new Answer.Chosen(Arrays.stream(options).map(OptionId::new).toList()));
    }

    private static Visit measure(Visit visit, String question, Amount amount) {
        return visit.answered(new QuestionId(question), new Answer.Measured(amount));
    }
}
