package fencerow.kiosk.unit;

import fencerow.explainers.Picture;
import fencerow.explainers.Pictures;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.MarkSample;
import fencerow.kiosk.kit.PartMark;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.terms.TopicId;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the tractor with each of its parts marked by how it stands on one unit: there, to be had, not there, unknown. */
final class TractorView {
    private static final double SIDE_EMS = 29;
    private static final double REAR_EMS = 18;
    private static final double LEAST_PART_MILLIMETRES = 15;

    private final Frame frame;
    private final Consumer<Place> go;
    private final Map<String, PartMark> marks = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();

    TractorView(Frame frame, List<UnitModel.StopPart> stops, Consumer<Place> go) {
        this.frame = frame;
        this.go = go;
        for (UnitModel.StopPart stop : stops) {
            for (UnitModel.FeatureLine line : stop.lines()) {
                marks.put(line.topic().value(), mark(line.sign()));
                names.put(line.topic().value(), line.name() + ": " + line.standing());
            }
        }
    }

    private static PartMark mark(Sign.Kind sign) {
        return switch (sign) {
            case YES -> PartMark.FITTED;
            case EXTRA -> PartMark.EXTRA;
            case NO, NEVER -> PartMark.MISSING;
            case UNKNOWN -> PartMark.UNVERIFIED;
        };
    }

    /** Side and rear, with what the marks mean; empty if there is no such drawing. */
    Optional<Node> node() {
        Pictures pictures = frame.library().pictures();
        Optional<Picture> side = pictures.tractor(Pictures.Side.SIDE);
        Optional<Picture> rear = pictures.tractor(Pictures.Side.REAR);
        if (side.isEmpty() || rear.isEmpty()) {
            return Optional.empty();
        }
        Set<PartMark> shown = EnumSet.noneOf(PartMark.class);
        for (Picture picture : List.of(side.get(), rear.get())) {
            picture.drawing().parts().forEach(part ->
                    Optional.ofNullable(marks.get(part)).ifPresent(shown::add));
        }
        VBox all = Boxes.stack(
                new Wrap(frame.scale(), shown.stream()
                        .map(mark -> new MarkSample(
                                frame.scale(), mark, frame.say("drawing." + mark.name().toLowerCase(Locale.ROOT))))
                        .toList()),
                new Split(frame.scale(), pane(side.get()), SIDE_EMS, pane(rear.get()), REAR_EMS),
                Words.small(frame.say("drawing.unit")));
        return Optional.of(all);
    }

    private DrawingPane pane(Picture picture) {
        DrawingPane pane = new DrawingPane(picture.drawing(), frame.texts().get(picture.altKey()))
                .touchable(names, frame.scale().px(LEAST_PART_MILLIMETRES),
                        part -> go.accept(Place.Topic.of(new TopicId(part))));
        pane.mark(marks);
        return pane;
    }
}
