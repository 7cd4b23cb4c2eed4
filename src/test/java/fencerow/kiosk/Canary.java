package fencerow.kiosk;

import fencerow.kiosk.frame.Place;
import fencerow.needs.Answer;
import fencerow.quiz.Belief;
import fencerow.stock.AskingPrice;
import fencerow.stock.Condition;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import fencerow.visit.SecondQuote;
import fencerow.visit.Visit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A visit that leaves a mark wherever a shopper can leave one, and a search for the mark. */
public final class Canary {
    /** Typed into the search; no content holds it. */
    public static final String WORD = "qxcanaryqx";
    /** A price no content and no stock holds. */
    private static final long DOLLARS = 13_579;

    private final Shown shown;

    /** In a kiosk of a test's own. Called on JavaFX's thread, as is all else. */
    public Canary(Shown shown) {
        this.shown = shown;
    }

    /** Answers, believes, pins, strikes out, types, tells of a quote; opens a screen of each and goes on. */
    public void visitEverything() {
        shown.frame().go(new Place.Home());
        shown.frame().change(fresh -> visit());
        shown.frame().change(shown.frame().comfort().withOtherUnits().withOtherContrast());
        for (Place place : List.of(
                new Place.Find(WORD, Optional.empty(), 0), Place.Questions.NEXT, Place.AllAnswers.TOP,
                Place.Results.TOP, Place.UnitSheet.of(new UnitId("n-203")), Place.SideBySide.TOP,
                Place.SecondQuote.of(Place.SecondQuote.Step.PRICE), Place.Quiz.NEXT, Place.QuizSummary.TOP,
                new Place.Guide(Visit.NEW, 0), Place.ListPreview.TOP, new Place.Print())) {
            shown.frame().go(place);
            shown.layOut();
        }
    }

    private Visit visit() {
        var quote = SecondQuote.of(MachineClass.SUBCOMPACT, Condition.USED).withPrice(new AskingPrice(
                Money.ofDollars(DOLLARS), Optional.empty(), Money.ZERO, Money.ZERO, Money.ZERO));
        return MatchPlaces.longDrive()
                .answered(new QuestionId("budget"), new Answer.Measured(new Amount(Dimension.MONEY, DOLLARS)))
                .believed(new QuestionId("quick-attach"), Belief.of(new OptionId("comes-with-it")))
                .togglePin(new UnitId("n-203"))
                .toggleAside(WORD)
                .toggleLine(WORD)
                .offered(Money.ofDollars(DOLLARS))
                .told(Optional.of(quote.unit(shown.frame().premises().showroom().catalogue())));
    }

    /** Whether the mark can be found, as it must be during the visit. */
    public boolean isReachable() {
        return !marks(Reachable.words(shown.frame(), shown.scene())).isEmpty();
    }

    /** What of the visit can still be reached from the kiosk. */
    public List<String> left(Object... furtherRoots) {
        Set<String> words = Reachable.words(shown.frame(), shown.scene());
        words.addAll(Reachable.words(furtherRoots));
        List<String> marks = marks(words);
        boolean fresh = shown.frame().visit().get().equals(Visit.NEW)
                && !shown.frame().comfort().highContrast() && !shown.frame().comfort().metric();
        return fresh ? marks : List.of("the visit is not a new one", String.join("; ", marks));
    }

    private static List<String> marks(Set<String> words) {
        return words.stream().filter(Canary::isIn).collect(Collectors.toList());
    }

    /** Whether the mark is in the text. */
    public static boolean isIn(String text) {
        return text.contains(WORD) || text.contains("13,579") || text.contains("13579");
    }
}
