package fencerow.kiosk.explainer;

import fencerow.explainers.Block;
import fencerow.kiosk.explainer.ExplainerModel.DrawnFigure;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.CautionBox;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * Draws an explainer. Where there is room, what it is about and the ways through it stand beside the text, like the
 * margin of a handbook; else above and below it.
 */
final class ExplainerView {
    /** From this width, in ems, there is room for a margin. */
    private static final double ROOM_FOR_MARGIN = 60;
    private static final double FIGURE_EMS = 15;
    private static final double LEAST_PART_MILLIMETRES = 15;

    private final ExplainerModel model;
    private final Frame frame;
    private final Touches touches;
    private final List<Node> sections = new ArrayList<>();
    private final Column column;
    private final Node node;

    /** What can be touched. */
    interface Touches {
        void topic(TopicId topic);

        void word(String id);

        void quiz(QuestionId question);

        void sum(String calculation);
    }

    ExplainerView(ExplainerModel model, Frame frame, double position, Touches touches) {
        this.model = model;
        this.frame = frame;
        this.touches = touches;
        boolean margin = frame.widthInEms() >= ROOM_FOR_MARGIN;
        VBox text = text();
        if (!model.figures().isEmpty()) {
            text.getChildren().add(0, figures());
        }
        if (!margin) {
            text.getChildren().add(0, opening());
        }
        text.getChildren().addAll(ending());
        text.getStyleClass().add(Styles.MEASURE);
        HBox page = new HBox(text);
        this.column = new Column(
                frame.scale(), page, position, frame.say("column.up"), frame.say("column.down"));
        if (margin) {
            VBox side = margin();
            HBox both = new HBox(side, Boxes.growing(column));
            both.getStyleClass().add("explainer");
            this.node = both;
        } else {
            HBox.setHgrow(text, Priority.ALWAYS);
            this.node = column;
        }
    }

    Node node() {
        return node;
    }

    double position() {
        return column.position();
    }

    private VBox text() {
        BlockView blocks = new BlockView(model, frame.scale(), touches);
        VBox text = Boxes.stack();
        for (Block block : model.blocks()) {
            Node drawn = blocks.of(block);
            text.getChildren().add(drawn);
            if (block instanceof Block.Heading) {
                sections.add(drawn);
            }
        }
        return text;
    }

    private Node figures() {
        List<Node> drawn = model.figures().stream().map(this::figure).toList();
        return drawn.size() == 1 ? drawn.get(0) : new Columns(frame.scale(), FIGURE_EMS, drawn.size(), drawn);
    }

    private Node figure(DrawnFigure figure) {
        DrawingPane pane = new DrawingPane(figure.drawing(), figure.alternative());
        if (!figure.parts().isEmpty()) {
            pane.touchable(figure.parts(), frame.scale().px(LEAST_PART_MILLIMETRES),
                    part -> touches.topic(new TopicId(part)));
        }
        VBox card = Boxes.card(pane);
        card.getStyleClass().add("figure");
        if (!figure.caption().isEmpty()) {
            card.getChildren().add(Words.of("figure-caption", figure.caption()));
        }
        return card;
    }

    private VBox opening() {
        return Boxes.tight(Words.of(Styles.FOLIO, model.where()), Words.lead(model.summary()));
    }

    private VBox margin() {
        VBox side = Boxes.loose(opening());
        VBox jumps = Boxes.stack();
        jumps.getStyleClass().add("jumps");
        int index = 0;
        for (Block block : model.blocks()) {
            if (block instanceof Block.Heading heading) {
                Node section = sections.get(index);
                jumps.getChildren().add(new Touch(heading.words(), Words.of("jump-words", heading.words()),
                        () -> column.show(section)).styled(Styles.QUIET, "jump"));
                index++;
            }
        }
        Column contents = new Column(
                frame.scale(), jumps, 0, frame.say("column.up"), frame.say("column.down"));
        side.getChildren().add(Boxes.growing(contents));
        work().ifPresent(side.getChildren()::add);
        check().ifPresent(side.getChildren()::add);
        side.getStyleClass().add("margin");
        return side;
    }

    private Optional<Touch> check() {
        return model.quiz().map(question -> Buttons.secondary(
                Icon.QUIZ, frame.say("topic.check-yourself"), () -> touches.quiz(question)));
    }

    /** Leads to the one calculation, or to a choice of them. */
    private Optional<Touch> work() {
        if (model.sums().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Buttons.secondary(Icon.WORK, frame.say("topic.work-it-out"), () -> {
            if (model.sums().size() == 1) {
                touches.sum(model.sums().get(0).calculation());
            } else {
                frame.lay(frame.say("topic.work-it-out"), Boxes.stack(model.sums().stream()
                        .map(each -> Buttons.secondary(
                                Icon.WORK, each.ask(), () -> touches.sum(each.calculation())))
                        .toList()));
            }
        }));
    }

    private List<Node> ending() {
        List<Node> parts = new ArrayList<>();
        if (!model.cautions().isEmpty()) {
            parts.add(new CautionBox(frame.say("topic.cautions"), model.cautions()));
        }
        List<Touch> links = new ArrayList<>();
        model.related().forEach(each -> links.add(Buttons.quiet(
                Icon.LEARN, each.title(), () -> touches.topic(each.topic())).styled("chip")));
        if (frame.widthInEms() < ROOM_FOR_MARGIN) {
            work().ifPresent(links::add);
            check().ifPresent(links::add);
        }
        if (!links.isEmpty()) {
            parts.add(section("topic.related", new Wrap(frame.scale(), links)));
        }
        if (!model.words().isEmpty()) {
            parts.add(section("topic.words", new Wrap(frame.scale(), model.words().stream()
                    .map(word -> Buttons.quiet(Icon.WORD, word.word(), () -> touches.word(word.id())).styled("chip"))
                    .toList())));
        }
        return parts;
    }

    private VBox section(String key, Node content) {
        VBox box = Boxes.stack(Words.subheading(frame.say(key)), content);
        box.getStyleClass().add("ending");
        return box;
    }
}
