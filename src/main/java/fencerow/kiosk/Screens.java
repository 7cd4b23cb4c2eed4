package fencerow.kiosk;

import fencerow.kiosk.answers.AnswersController;
import fencerow.kiosk.ask.AskController;
import fencerow.kiosk.attract.AttractController;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.home.HomeController;

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
        return new HomeController(frame);
    }
}
