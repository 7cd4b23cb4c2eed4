package fencerow.kiosk;

import fencerow.kiosk.answers.AnswersController;
import fencerow.kiosk.ask.AskController;
import fencerow.kiosk.code.CodeController;
import fencerow.kiosk.compare.CompareController;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.guide.GuideController;
import fencerow.kiosk.list.ListController;
import fencerow.kiosk.outcome.OutcomeController;
import fencerow.kiosk.print.PrintController;
import fencerow.kiosk.quiz.QuizController;
import fencerow.kiosk.quote.QuoteController;
import fencerow.kiosk.results.ResultsController;
import fencerow.kiosk.unit.UnitController;
import java.util.Optional;

/** Which screen of matching, quiz and list belongs to which place. */
final class MatchScreens {
    private MatchScreens() {}

    /** The place's screen, where it is one of these. */
    static Optional<Screen> find(Place place, Frame frame) {
        if (place instanceof Place.Questions questions) {
            return Optional.of(AskController.of(frame, questions)
                    .orElseGet(() -> new AnswersController(frame, Place.AllAnswers.TOP)));
        }
        if (place instanceof Place.AllAnswers answers) {
            return Optional.of(new AnswersController(frame, answers));
        }
        if (place instanceof Place.Results results) {
            return Optional.of(new ResultsController(frame, results));
        }
        if (place instanceof Place.UnitSheet unit) {
            return Optional.of(new UnitController(frame, unit));
        }
        if (place instanceof Place.SideBySide compare) {
            return Optional.of(new CompareController(frame, compare));
        }
        if (place instanceof Place.SecondQuote quote) {
            return Optional.of(new QuoteController(frame, quote));
        }
        if (place instanceof Place.Guide guide) {
            return Optional.of(new GuideController(frame, guide));
        }
        return findQuizOrList(place, frame);
    }

    private static Optional<Screen> findQuizOrList(Place place, Frame frame) {
        if (place instanceof Place.Quiz quiz) {
            return Optional.of(new QuizController(frame, quiz));
        }
        if (place instanceof Place.QuizSummary summary) {
            return Optional.of(new OutcomeController(frame, summary));
        }
        if (place instanceof Place.ListPreview list) {
            return Optional.of(new ListController(frame, list));
        }
        if (place instanceof Place.EnterCode code && frame.premises().comeBack().isPresent()) {
            return Optional.of(new CodeController(frame, code, frame.premises().comeBack().get()));
        }
        return place instanceof Place.Print ? Optional.of(new PrintController(frame)) : Optional.empty();
    }
}
