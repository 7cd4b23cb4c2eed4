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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the start page. */
final class HomeView {
    private static final double DOOR_EMS = 19;
    private static final double WAY_EMS = 13;
    private static final double WAYS_EMS = 22;
    private static final double TRACTOR_EMS = 29;
    private static final double OTHER_EMS = 6;
    private static final double UPRIGHT_TRACTOR_EMS = 22;
    private static final double UPRIGHT_OTHER_EMS = 7;
    private static final double OTHERS_MILLIMETRES = 120;
    private static final double TRACTOR_MILLIMETRES = 205;
    private static final double LEAST_PART_MILLIMETRES = 15;

    private HomeView() {}

    static Node of(HomeModel model, Frame frame, Consumer<Place> go) {
        Columns doors = new Columns(frame.scale(), DOOR_EMS, model.doors().size(),
                model.doors().stream().map(door -> door(door, go)).toList());
        List<Touch> buttons = new ArrayList<>(List.of(
                Buttons.secondary(Icon.SEARCH, model.search(), () -> go.accept(Place.Find.EMPTY)),
                Buttons.secondary(Icon.WORK, model.work(), () -> go.accept(Place.Work.FIRST))));
        model.code().ifPresent(words -> buttons.add(
                Buttons.secondary(Icon.UNDO, words, () -> go.accept(Place.EnterCode.EMPTY))));
        Columns ways = new Columns(frame.scale(), WAY_EMS, 2, buttons);
        Node below = model.tractor().map(tractor -> below(tractor, ways, frame, go)).orElse(ways);
        VBox page = Boxes.loose(doors, below);
        return new Column(frame.scale(), page, 0, frame.say("column.up"), frame.say("column.down"));
    }

    /** Across, the ways and the other views stand beside the tractor; upright, the other views alone. */
    private static Node below(HomeModel.Tractor tractor, Node ways, Frame frame, Consumer<Place> go) {
        Node touched = Boxes.stack(Words.subheading(tractor.invitation()), drawn(tractor, frame, go));
        if (frame.isLandscape()) {
            return new Split(frame.scale(), touched, TRACTOR_EMS,
                    Boxes.loose(ways, others(tractor, 2, frame, go)), WAYS_EMS);
        }
        return Boxes.loose(new Split(frame.scale(), touched, UPRIGHT_TRACTOR_EMS,
                others(tractor, 1, frame, go), UPRIGHT_OTHER_EMS), ways);
    }

    private static Node drawn(HomeModel.Tractor tractor, Frame frame, Consumer<Place> go) {
        DrawingPane side = pane(tractor.drawing(), tractor.alternative(), tractor.parts(), frame, go);
        side.setMaxWidth(frame.scale().px(TRACTOR_MILLIMETRES));
        return side;
    }

    private static Node others(HomeModel.Tractor tractor, int columns, Frame frame, Consumer<Place> go) {
        Columns others = new Columns(frame.scale(), OTHER_EMS, columns, tractor.others().stream()
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
        VBox words = Boxes.stack(
                Boxes.row(door.icon().node(), Boxes.growing(Words.heading(door.title()))), Words.body(door.text()));
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(door.title() + ". " + door.text(), words, () -> go.accept(door.place())).styled("door");
    }
}
