package fencerow.kiosk.topics;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Register;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.topics.TopicsModel.Card;
import fencerow.kiosk.topics.TopicsModel.Shelf;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws the list of topics: the stops as a register, the topics as cards. */
final class TopicsView {
    private static final double CARD_EMS = 15;
    private static final int MOST_COLUMNS = 3;
    /** From this width, in ems, search and calculations stand beside each other. */
    private static final double ROOM_FOR_ROW = 43;

    private final TopicsModel model;
    private final Frame frame;
    private final Node node;
    private final Column column;

    TopicsView(TopicsModel model, Frame frame, double position) {
        this.model = model;
        this.frame = frame;
        this.column = column(new Columns(frame.scale(), CARD_EMS, MOST_COLUMNS,
                model.cards().stream().map(this::card).toList()), position);
        this.node = page();
    }

    Node node() {
        return node;
    }

    double position() {
        return column.position();
    }

    private Column column(Node content, double position) {
        return new Column(frame.scale(), content, position, frame.say("column.up"), frame.say("column.down"));
    }

    private Touch card(Card card) {
        VBox words = Boxes.tight(Words.subheading(card.title()), Words.small(card.text()));
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(card.title() + ". " + card.text(), words, () -> frame.go(Place.Topic.of(card.topic())))
                .styled(Styles.CARD, "topic");
    }

    private Node page() {
        List<Register.Shelf> shelves = model.shelves().stream()
                .map(shelf -> new Register.Shelf(
                        shelf.number(), shelf.name(), shelf.chosen(), () -> frame.goInstead(shelf.place())))
                .toList();
        Touch work = Buttons.secondary(
                Icon.WORK, frame.say("topic.work-it-out"), () -> frame.go(Place.Work.FIRST));
        Node ways = frame.widthInEms() < ROOM_FOR_ROW
                ? Boxes.stack(searchButton(), work)
                : Boxes.row(Boxes.growing(searchButton()), work);
        VBox right = Boxes.stack(ways, Boxes.growing(column));
        return new Register(frame.scale(), frame.isLandscape(), shelves, right,
                frame.say("column.up"), frame.say("column.down"));
    }

    private Touch searchButton() {
        HBox row = new HBox(Icon.SEARCH.node(), Words.of("field-words", frame.say("topics.search")));
        row.getStyleClass().add("field-row");
        return new Touch(frame.say("topics.search"), row, () -> frame.go(Place.Find.EMPTY)).styled(Styles.FIELD);
    }
}
