package fencerow.kiosk;

import fencerow.kiosk.answers.AnswersController;
import fencerow.kiosk.ask.AskController;
import fencerow.kiosk.attract.AttractController;
import fencerow.kiosk.compare.CompareController;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.guide.GuideController;
import fencerow.kiosk.quiz.QuizController;
import fencerow.kiosk.outcome.OutcomeController;
import fencerow.kiosk.list.ListController;
import fencerow.kiosk.print.PrintController;
import fencerow.kiosk.home.HomeController;
import fencerow.kiosk.quote.QuoteController;
import fencerow.kiosk.results.ResultsController;
import fencerow.kiosk.unit.UnitController;

/** Which screen belongs to which place. */
final class Screens {
    private Screens() {}

    static Screen make(Place place, Frame frame) {
        if (place instanceof Place.Attract) {
            return new AttractController(frame);
        }
        if (place instanceof Place.Questions questions) {
            return AskController.of(frame, questions).orElseGet(() ->
                    new AnswersController(frame, Place.AllAnswers.TOP));
        }
        if (place instanceof Place.AllAnswers answers) {
            return new AnswersController(frame, answers);
        }
        if (place instanceof Place.Results results) {
            return new ResultsController(frame, results);
        }
        if (place instanceof Place.UnitSheet unit) {
            return new UnitController(frame, unit);
        }
        if (place instanceof Place.SideBySide compare) {
            return new CompareController(frame, compare);
        }
        if (place instanceof Place.SecondQuote quote) {
            return new QuoteController(frame, quote);
        }
        if (place instanceof Place.Guide guide) {
            return new GuideController(frame, guide);
        }
        if (place instanceof Place.Quiz quiz) {
            return new QuizController(frame, quiz);
        }
        if (place instanceof Place.QuizSummary summary) {
            return new OutcomeController(frame, summary);
        }
        if (place instanceof Place.ListPreview list) {
            return new ListController(frame, list);
        }
        if (place instanceof Place.Print) {
            return new PrintController(frame);
        }
        return new HomeController(frame);
    }
}
