package fencerow.kiosk.topics;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keyboard;
import fencerow.kiosk.kit.Register;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.topics.TopicsModel.Card;
import fencerow.kiosk.topics.TopicsModel.Target;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Draws the list of topics: the stops as a register, the topics as cards, and the search with its keyboard. */
final class TopicsView {
    private static final double CARD_EMS = 15;
    private static final int MOST_COLUMNS = 3;
    /** From this width, in ems, search and calculations stand beside each other. */
    private static final double ROOM_FOR_ROW = 43;

    private final TopicsModel model;
    private final Frame frame;
    private final Touches touches;
    private final StackPane list = new StackPane();
    private final Node node;
    private final double firstPosition;
    private Column column;

    /** What can be touched. */
    interface Touches {
        void shelf(Place shelf);

        void card(Target target);

        void search();

        void work();

        void typed(String letter);

        void backspace();

        void closeSearch();
    }

    TopicsView(TopicsModel model, Frame frame, double position, Touches touches) {
        this.model = model;
        this.frame = frame;
        this.touches = touches;
        this.firstPosition = position;
        this.column = column(Boxes.stack(), position);
        this.node = model.searching() ? searchPage() : shelvesPage();
        frame.follow(model.cards(), cards -> show());
        frame.follow(model.note(), note -> show());
    }

    Node node() {
        return node;
    }

    double position() {
        return column.position();
    }

    private void show() {
        VBox page = Boxes.stack();
        if (!model.note().get().isEmpty()) {
            page.getChildren().add(Words.lead(model.note().get()));
        }
        page.getChildren().add(new Columns(frame.scale(), CARD_EMS, MOST_COLUMNS,
                model.cards().get().stream().map(this::card).toList()));
        column = column(page, model.searching() ? 0 : firstPosition);
        list.getChildren().setAll(column);
    }

    private Column column(Node content, double position) {
        return new Column(frame.scale(), content, position, frame.say("column.up"), frame.say("column.down"));
    }

    private Touch card(Card card) {
        VBox words = Boxes.tight(Words.subheading(card.title()), Words.small(card.text()));
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(card.title() + ". " + card.text(), words, () -> touches.card(card.target()))
                .styled(Styles.CARD, "topic");
    }

    private Node shelvesPage() {
        List<Register.Shelf> shelves = model.shelves().stream()
                .map(shelf -> new Register.Shelf(
                        shelf.number(), shelf.name(), shelf.chosen(), () -> touches.shelf(shelf.place())))
                .toList();
        Touch work = Buttons.secondary(Icon.WORK, frame.say("topic.work-it-out"), touches::work);
        Node ways = frame.widthInEms() < ROOM_FOR_ROW
                ? Boxes.stack(searchButton(), work)
                : Boxes.row(Boxes.growing(searchButton()), work);
        VBox right = Boxes.stack(ways, Boxes.growing(list));
        return new Register(frame.scale(), frame.isLandscape(), shelves, right,
                frame.say("column.up"), frame.say("column.down"));
    }

    private Touch searchButton() {
        HBox row = new HBox(Icon.SEARCH.node(), Words.of("field-words", frame.say("topics.search")));
        row.getStyleClass().add("field-row");
        return new Touch(frame.say("topics.search"), row, touches::search).styled(Styles.FIELD);
    }

    private Node searchPage() {
        Label typed = Words.of("field-words", "");
        typed.textProperty().bind(model.query());
        StackPane caret = new StackPane();
        caret.getStyleClass().add("caret");
        HBox line = new HBox(Icon.SEARCH.node(), typed, caret);
        line.getStyleClass().add("field-row");
        StackPane field = new StackPane(line);
        field.getStyleClass().addAll(Styles.FIELD, "typing");
        HBox top = Boxes.row(Boxes.growing(field),
                Buttons.secondary(Icon.CLOSE, frame.say("topics.close-search"), touches::closeSearch));
        Keyboard keyboard = new Keyboard(frame.scale(),
                new Keyboard.Names(frame.say("keyboard.letters"), frame.say("keyboard.further"),
                        frame.say("keyboard.space"), frame.say("keyboard.backspace")),
                touches::typed, touches::backspace);
        return Boxes.stack(top, Boxes.growing(list), keyboard);
    }
}
