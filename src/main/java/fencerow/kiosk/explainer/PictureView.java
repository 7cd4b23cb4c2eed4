package fencerow.kiosk.explainer;

import fencerow.explainers.Picture;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.Words;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws what an explainer is about: with it and, where it helps, without it beside that or below. */
final class PictureView {
    private static final double PAIR_EMS = 13;
    private static final double MILLIMETRES = 150;
    private static final double LEAST_PART_MILLIMETRES = 15;

    private final Frame frame;
    private final Consumer<TopicId> touched;

    PictureView(Frame frame, Consumer<TopicId> touched) {
        this.frame = frame;
        this.touched = touched;
    }

    /** The topic's pictures; empty if it has none. */
    Optional<Node> of(TopicId topic) {
        Optional<Picture> picture = frame.library().pictures().of(topic);
        Optional<Picture> without = frame.library().pictures().without(topic);
        if (picture.isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> names = names(picture.get(), topic);
        List<Node> parts = new ArrayList<>();
        if (without.isPresent()) {
            parts.add(new Columns(frame.scale(), PAIR_EMS, 2, List.of(
                    captioned("drawing.with", pane(picture.get(), names)),
                    captioned("drawing.without", pane(without.get(), names(without.get(), topic))))));
        } else {
            DrawingPane pane = pane(picture.get(), names);
            pane.setMaxWidth(frame.scale().px(MILLIMETRES));
            parts.add(pane);
        }
        if (!names.isEmpty()) {
            parts.add(Words.small(frame.say("drawing.touch")));
        }
        return Optional.of(Boxes.tight(parts.toArray(Node[]::new)));
    }

    private VBox captioned(String key, DrawingPane pane) {
        return Boxes.tight(pane, Words.subheading(frame.say(key)));
    }

    private DrawingPane pane(Picture picture, Map<String, String> names) {
        DrawingPane pane = new DrawingPane(picture.drawing(), frame.texts().get(picture.altKey()));
        return names.isEmpty()
                ? pane
                : pane.touchable(names, frame.scale().px(LEAST_PART_MILLIMETRES),
                        part -> touched.accept(new TopicId(part)));
    }

    /** What the parts that lead to another explainer are called. */
    private Map<String, String> names(Picture picture, TopicId topic) {
        Map<String, String> names = new HashMap<>();
        for (String part : picture.drawing().parts()) {
            if (!part.equals(topic.value())) {
                frame.library().find(new TopicId(part)).ifPresent(other -> names.put(part, other.title()));
            }
        }
        return names;
    }
}
