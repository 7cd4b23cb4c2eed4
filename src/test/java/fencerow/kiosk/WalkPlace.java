package fencerow.kiosk;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * One screen in one state, for the walk test and the contact sheet. A new screen joins by one line in {@link #all}.
 *
 * @param name    of the picture
 * @param prepare leads the frame, which shows the start page of a new visit, to the screen
 */
record WalkPlace(String name, Consumer<Frame> prepare) {
    static List<WalkPlace> all() {
        List<WalkPlace> all = new ArrayList<>(MatchPlaces.all());
        all.addAll(List.of(
                at("attract", new Place.Attract()),
                at("home", new Place.Home()),
                new WalkPlace("help", frame -> frame.lay(frame.say("strip.help"),
                        Words.body(frame.say("help.privacy"))))));
        return all;
    }

    /** The screen of a place, in a new visit. */
    static WalkPlace at(String name, Place place) {
        return new WalkPlace(name, frame -> frame.go(place));
    }
}
