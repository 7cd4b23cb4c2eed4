package fencerow.kiosk;

import fencerow.kiosk.attract.AttractController;
import fencerow.kiosk.explainer.ExplainerController;
import fencerow.kiosk.find.FindController;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.home.HomeController;
import fencerow.kiosk.topics.TopicsController;
import fencerow.kiosk.work.SheetController;
import fencerow.kiosk.work.WorkController;

/** Which screen belongs to which place. */
final class Screens {
    private Screens() {}

    static Screen make(Place place, Frame frame) {
        if (place instanceof Place.Attract) {
            return new AttractController(frame);
        }
        if (place instanceof Place.Topics topics) {
            return new TopicsController(frame, topics);
        }
        if (place instanceof Place.Find find) {
            return new FindController(frame, find);
        }
        if (place instanceof Place.Topic topic) {
            return new ExplainerController(frame, topic);
        }
        if (place instanceof Place.Work work) {
            return new WorkController(frame, work);
        }
        if (place instanceof Place.Worksheet sheet) {
            return SheetController.of(frame, sheet)
                    .orElseGet(() -> new WorkController(frame, Place.Work.FIRST));
        }
        if (place instanceof Place.ForStaff behindTheDoor) {
            return StaffScreens.make(behindTheDoor, frame);
        }
        return MatchScreens.find(place, frame).orElseGet(() -> new HomeController(frame));
    }
}
