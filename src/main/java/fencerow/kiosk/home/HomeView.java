package fencerow.kiosk.home;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the start page. */
final class HomeView {
    private static final double DOOR_EMS = 13;

    private HomeView() {}

    static Node of(HomeModel model, Frame frame, Consumer<Place> go) {
        Columns doors = new Columns(frame.scale(), DOOR_EMS, model.doors().size(),
                model.doors().stream().map(door -> door(door, go)).toList());
        Touch search = Buttons.secondary(Icon.SEARCH, model.search(), () -> go.accept(Place.Topics.SEARCH));
        VBox page = Boxes.loose(doors, search);
        search.setMaxWidth(VBox.USE_PREF_SIZE);
        return new Column(frame.scale(), page, 0, frame.say("column.up"), frame.say("column.down"));
    }

    private static Touch door(HomeModel.Door door, Consumer<Place> go) {
        VBox words = Boxes.stack(door.icon().node(), Words.heading(door.title()), Words.body(door.text()));
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(door.title() + ". " + door.text(), words, () -> go.accept(door.place())).styled("door");
    }
}
