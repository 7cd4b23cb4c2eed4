package fencerow.kiosk.home;

import fencerow.explainers.Drawing;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.terms.TopicId;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the start page. */
final class HomeView {
    private static final double DOOR_EMS = 13;
    private static final double SEARCH_EMS = 13;
    private static final double TRACTOR_EMS = 29;
    private static final double OTHER_EMS = 6;
    private static final double OTHERS_MILLIMETRES = 180;
    private static final double TRACTOR_MILLIMETRES = 215;
    private static final double LEAST_PART_MILLIMETRES = 15;

    private HomeView() {}

    static Node of(HomeModel model, Frame frame, Consumer<Place> go) {
        Columns doors = new Columns(frame.scale(), DOOR_EMS, model.doors().size(),
                model.doors().stream().map(door -> door(door, go)).toList());
        VBox ways = Boxes.stack(
                narrow(Buttons.secondary(Icon.SEARCH, model.search(), () -> go.accept(Place.Find.EMPTY))),
                narrow(Buttons.secondary(Icon.WORK, model.work(), () -> go.accept(Place.Work.FIRST))));
        model.code().ifPresent(words -> ways.getChildren().add(
                narrow(Buttons.secondary(Icon.UNDO, words, () -> go.accept(Place.EnterCode.EMPTY)))));
        Node below = model.tractor()
                .map(tractor -> (Node) new Split(
                        frame.scale(),
                        Boxes.loose(ways, Words.body(tractor.invitation()), others(tractor, frame, go)),
                        SEARCH_EMS,
                        drawn(tractor, frame, go),
                        TRACTOR_EMS))
                .orElse(ways);
        VBox page = Boxes.loose(doors, below);
        return new Column(frame.scale(), page, 0, frame.say("column.up"), frame.say("column.down"));
    }

    private static Touch narrow(Touch button) {
        button.setMaxWidth(VBox.USE_PREF_SIZE);
        return button;
    }

    private static Node drawn(HomeModel.Tractor tractor, Frame frame, Consumer<Place> go) {
        DrawingPane side = pane(tractor.drawing(), tractor.alternative(), tractor.parts(), frame, go);
        side.setMaxWidth(frame.scale().px(TRACTOR_MILLIMETRES));
        return side;
    }

    private static Node others(HomeModel.Tractor tractor, Frame frame, Consumer<Place> go) {
        Columns others = new Columns(frame.scale(), OTHER_EMS, 2, tractor.others().stream()
                .map(other -> pane(other.drawing(), other.alternative(), tractor.parts(), frame, go))
                .toList());
        others.setMaxWidth(frame.scale().px(OTHERS_MILLIMETRES));
        return others;
    }

    private static DrawingPane pane(
            Drawing drawing, String alternative, Map<String, String> parts, Frame frame, Consumer<Place> go) {
        return new DrawingPane(drawing, alternative)
                .touchable(parts, frame.scale().px(LEAST_PART_MILLIMETRES),
                        part -> go.accept(Place.Topic.of(new TopicId(part))));
    }

    private static Touch door(HomeModel.Door door, Consumer<Place> go) {
        VBox words = Boxes.stack(door.icon().node(), Words.heading(door.title()), Words.body(door.text()));
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(door.title() + ". " + door.text(), words, () -> go.accept(door.place())).styled("door");
    }
}
