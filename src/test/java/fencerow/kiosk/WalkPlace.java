package fencerow.kiosk;

import fencerow.kiosk.explainer.WordSheet;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.search.Kind;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.AccessibleAction;

/**
 * One screen in one state, for the walk test and the contact sheet. A new screen joins by one line in {@link #all}.
 *
 * @param name    of the picture
 * @param prepare leads the frame, which shows the start page of a new visit, to the screen
 * @param then    what is touched there
 */
record WalkPlace(String name, Consumer<Frame> prepare, Consumer<Shown> then) {
    /** Where nothing is touched. */
    WalkPlace(String name, Consumer<Frame> prepare) {
        this(name, prepare, shown -> {});
    }

    static List<WalkPlace> all() {
        List<WalkPlace> all = new ArrayList<>(MatchPlaces.all());
        all.addAll(WorkPlaces.all());
        all.addAll(StaffPlaces.all());
        all.addAll(List.of(
                at("attract", new Place.Attract()),
                at("home", new Place.Home()),
                at("topics", Place.Topics.FIRST),
                at("topics-stop", new Place.Topics(Optional.of(Stop.HYDRAULICS), 0)),
                at("find", Place.Find.EMPTY),
                at("find-bucket", find("bucket")),
                at("find-stock", find("cab under 30000")),
                at("find-misspelt", find("hydralic")),
                at("find-nothing", find("qqqqq")),
                new WalkPlace("find-attachment", frame -> frame.go(find("tiller")),
                        WalkPlace::touchFirstCard),
                at("topic", topic("quick-attach", 0)),
                at("topic-middle", topic("rear-remotes", 0.5)),
                at("topic-end", topic("liquid-ballast", 1)),
                at("topic-table", topic("resale", 0.5)),
                at("staff", new Place.Staff()),
                new WalkPlace("staff-open", frame -> frame.go(new Place.Staff()),
                        WalkPlace::openTheDoor),
                new WalkPlace("asking", frame -> frame.go(Place.Topics.FIRST), shown -> {
                    shown.clock().pass(Duration.ofMinutes(1).plusSeconds(20));
                    shown.frame().tick();
                }),
                at("code", new Place.EnterCode("K7QM3F")),
                new WalkPlace("code-wrong", frame -> frame.go(new Place.EnterCode("K7QM3F9TXW2B")),
                        shown -> shown.touch(shown.frame().say("code.look"))),
                new WalkPlace("code-back", frame -> frame.go(new Place.EnterCode(ScriptedComeBack.CODE)),
                        shown -> shown.touch(shown.frame().say("code.look"))),
                new WalkPlace("word", frame -> WordSheet.lay(frame, "pto")),
                new WalkPlace("help", frame -> frame.go(Place.Topics.FIRST),
                        shown -> shown.touch(shown.frame().say("strip.help")))));
        return all;
    }

    private static void touchFirstCard(Shown shown) {
        shown.touches().stream()
                .filter(touch -> touch.getStyleClass().contains("topic"))
                .findFirst()
                .orElseThrow()
                .executeAccessibleAction(AccessibleAction.FIRE);
    }

    private static Place find(String words) {
        return new Place.Find(words, Optional.of(Kind.ATTACHMENT).filter(kind -> words.equals("tiller")), 0);
    }

    private static Place.Topic topic(String id, double scroll) {
        return new Place.Topic(new TopicId(id), scroll);
    }

    /** The screen of a place, in a new visit. */
    static WalkPlace at(String name, Place place) {
        return new WalkPlace(name, frame -> frame.go(place));
    }

    private static void openTheDoor(Shown shown) {
        Rooms.PIN.codePoints().mapToObj(Character::toString).forEach(shown::touch);
        shown.touch(shown.frame().say("staff.enter"));
    }
}
