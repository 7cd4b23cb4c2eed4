package fencerow.kiosk.topics;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.kiosk.topics.TopicsModel.Card;
import fencerow.kiosk.topics.TopicsModel.Shelf;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws the list of topics: the stops as a register, the topics as cards. */
final class TopicsView {
    private static final double CARD_EMS = 15;
    private static final int MOST_COLUMNS = 3;

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
        BorderPane pane = new BorderPane();
        VBox right = Boxes.stack(searchButton(), Boxes.growing(column));
        List<Touch> shelves = model.shelves().stream().map(this::shelf).toList();
        if (frame.isLandscape()) {
            Column register = column(Boxes.stack(shelves), 0);
            register.getStyleClass().add("register");
            pane.setLeft(register);
            right.getStyleClass().add("beside-register");
            pane.setCenter(right);
        } else {
            pane.setCenter(Boxes.stack(new Wrap(frame.scale(), shelves), Boxes.growing(right)));
        }
        return pane;
    }

    private Touch shelf(Shelf shelf) {
        Label number = Words.of("shelf-number", shelf.number());
        HBox row = shelf.number().isEmpty()
                ? Boxes.row(Words.of("shelf-name", shelf.name()))
                : Boxes.row(number, Words.of("shelf-name", shelf.name()));
        Touch touch = new Touch(shelf.name(), row, () -> frame.goInstead(shelf.place())).styled("shelf");
        touch.select(shelf.chosen());
        return touch;
    }

    private Touch searchButton() {
        HBox row = new HBox(Icon.SEARCH.node(), Words.of("field-words", frame.say("topics.search")));
        row.getStyleClass().add("field-row");
        return new Touch(frame.say("topics.search"), row, () -> frame.go(Place.Find.EMPTY)).styled(Styles.FIELD);
    }
}
