package fencerow.kiosk.stocklist;

import fencerow.kiosk.bookkeeping.Typed;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place.StaffUnits.Which;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Ends;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keyboard;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Draws the field, the ways to narrow the list, the list, and the keyboard while somebody types. */
final class StockListView {
    private static final double LINE_EMS = 26;
    /** From this width, in ems, there is room for the list beside the keys. */
    private static final double ROOM_FOR_BOTH = 60;

    private final Frame frame;
    private final Touches touches;
    private final StringProperty words = new SimpleStringProperty("");
    private final StackPane list = new StackPane();
    private final StackPane foot = new StackPane();
    private final StackPane node = new StackPane();

    /** What can be touched. */
    interface Touches {
        String words();

        void type(boolean typing);

        void words(String words);

        void which(Which which);

        void turn(int pages);

        void open(UnitId unit);

        void add();
    }

    StockListView(Frame frame, Touches touches) {
        this.frame = frame;
        this.touches = touches;
        list.getChildren().setAll(Words.lead(frame.say("results.working")));
    }

    Node node() {
        return node;
    }

    /** With the keyboard, or with all the room for the list. */
    void arrange(boolean typing) {
        words.set(touches.words());
        if (!typing) {
            node.getChildren().setAll(Boxes.stack(Boxes.growing(list), foot));
            return;
        }
        HBox top = Boxes.row(Boxes.growing(Typed.field(words, true)), Buttons.secondary(
                Icon.CHECK, frame.say("stocklist.done"), () -> touches.type(false)));
        Keyboard keys = Typed.keys(frame, touches::words, touches::words);
        if (frame.isLandscape() && frame.widthInEms() >= ROOM_FOR_BOTH) {
            VBox right = Boxes.stack(Boxes.filler(), keys);
            right.setMinWidth(keys.prefWidth(-1));
            right.setMaxWidth(keys.prefWidth(-1));
            HBox below = new HBox(Boxes.growing(list), right);
            below.getStyleClass().add("list-and-keys");
            node.getChildren().setAll(Boxes.stack(top, Boxes.growing(below)));
        } else {
            node.getChildren().setAll(Boxes.stack(top, Boxes.growing(list), keys));
        }
    }

    void show(StockListModel model) {
        words.set(model.words());
        List<Touch> chips = new ArrayList<>();
        model.chips().forEach(chip -> chips.add(new Touch(chip.words(), Words.of("button-words", chip.words()),
                () -> touches.which(chip.which())).styled("chip", "kind-chip").select(chip.chosen())));
        VBox page = Boxes.stack(new Wrap(frame.scale(), chips), Words.small(model.count()),
                new Columns(frame.scale(), LINE_EMS, 2, model.lines().stream().map(this::line).toList()));
        list.getChildren().setAll(
                new Column(frame.scale(), page, 0, frame.say("column.up"), frame.say("column.down")));
        List<Touch> aside = new ArrayList<>();
        String look = model.words().isBlank()
                ? frame.say("stocklist.look-for")
                : frame.say("stocklist.looked-for", Map.of("words", model.words()));
        aside.add(Buttons.secondary(Icon.SEARCH, look, () -> touches.type(true)));
        if (model.before()) {
            aside.add(Buttons.secondary(Icon.BACK, frame.say("stocklist.before"), () -> touches.turn(-1)));
        }
        if (model.after()) {
            aside.add(Buttons.secondary(Icon.FORWARD, frame.say("stocklist.after"), () -> touches.turn(1)));
        }
        foot.getChildren().setAll(new Ends(frame.scale(), new Wrap(frame.scale(), aside),
                Buttons.primary(Icon.PLUS, frame.say("stocklist.add"), touches::add)).toTheRight());
    }

    private Touch line(StockListModel.Line line) {
        Ends ends = new Ends(frame.scale(),
                Boxes.tight(Words.of("line-title", line.title()), Words.of(Styles.SMALL, line.about())),
                Words.of("line-price", line.asking()));
        return new Touch(line.title() + ", " + line.about(), ends, () -> touches.open(line.unit()))
                .styled("unit-line");
    }
}
