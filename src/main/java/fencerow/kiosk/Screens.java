package fencerow.kiosk;

import fencerow.kiosk.answers.AnswersController;
import fencerow.kiosk.ask.AskController;
import fencerow.kiosk.attract.AttractController;
import fencerow.kiosk.compare.CompareController;
import fencerow.kiosk.explainer.ExplainerController;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.home.HomeController;
import fencerow.kiosk.quote.QuoteController;
import fencerow.kiosk.results.ResultsController;
import fencerow.kiosk.unit.UnitController;
import fencerow.kiosk.topics.TopicsController;

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
        if (place instanceof Place.Topics topics) {
            return new TopicsController(frame, topics);
        }
        if (place instanceof Place.Topic topic) {
            return new ExplainerController(frame, topic);
        }
        return new HomeController(frame);
    }
}
