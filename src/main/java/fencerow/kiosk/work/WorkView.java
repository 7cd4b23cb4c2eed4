package fencerow.kiosk.work;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Register;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the list of calculations: the areas as a register, the calculations as cards. */
final class WorkView {
    private static final double CARD_EMS = 15;
    private static final int MOST_COLUMNS = 3;

    private final Column column;
    private final Node node;

    WorkView(WorkModel model, Frame frame, double position, Consumer<Place> area, Consumer<Place> go) {
        VBox page = Boxes.stack(Words.lead(model.lead()), new Columns(frame.scale(), CARD_EMS, MOST_COLUMNS,
                model.cards().stream().map(card -> card(card, go)).toList()));
        this.column = new Column(
                frame.scale(), page, position, frame.say("column.up"), frame.say("column.down"));
        this.node = new Register(frame.scale(), frame.isLandscape(),
                model.areas().stream()
                        .map(each -> new Register.Shelf(
                                "", each.name(), each.chosen(), () -> area.accept(each.place())))
                        .toList(),
                Boxes.stack(Boxes.growing(column)), frame.say("column.up"), frame.say("column.down"));
    }

    private static Touch card(WorkModel.Card card, Consumer<Place> go) {
        VBox words = Boxes.tight(Words.subheading(card.ask()));
        if (!card.gives().isEmpty()) {
            words.getChildren().add(Words.small(card.gives()));
        }
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(card.ask(), words, () -> go.accept(card.place())).styled(Styles.CARD, "topic");
    }

    Node node() {
        return node;
    }

    double position() {
        return column.position();
    }
}
