package fencerow.kiosk.stockadd;

import fencerow.kiosk.bookkeeping.Typed;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place.StaffAdd.Step;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keypad;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Progress;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Draws a step of telling of a new unit. */
final class StockAddView {
    private static final double CHOICE_EMS = 13;
    private static final double KEYS_MILLIMETRES = 95;

    private final Frame frame;
    private final Step step;
    private final Touches touches;
    private final StringProperty text = new SimpleStringProperty("");
    private final Label note = Words.lead("");
    private final Page page;

    /** What can be touched. */
    interface Touches {
        String id();

        void id(String typed);

        void model(String model);

        void condition(String condition);

        void digits(String digits);

        void takeAway();

        void next();
    }

    StockAddView(Frame frame, Step step, Touches touches) {
        this.frame = frame;
        this.step = step;
        this.touches = touches;
        this.page = new Page(frame.scale(), 0, frame.say("column.up"), frame.say("column.down"));
        if (step != Step.MODEL) {
            page.show(Boxes.stack(head(), Typed.field(text, false),
                    step == Step.ID ? Typed.keys(frame, touches::id, touches::id) : keypad()));
        }
    }

    private Node keypad() {
        Keypad keys = new Keypad(frame.scale(), frame.say("keyboard.backspace"), touches::digits, touches::takeAway);
        keys.setPrefWidth(frame.scale().px(KEYS_MILLIMETRES));
        return keys;
    }

    Node node() {
        return page;
    }

    private VBox head() {
        int number = step.ordinal();
        int steps = Step.values().length;
        return Boxes.stack(new Progress(number, steps,
                frame.say("quote.step", Map.of("step", number + 1, "of", steps))), note);
    }

    void show(StockAddModel model) {
        text.set(model.text());
        note.setText(model.note());
        if (step == Step.MODEL) {
            page.show(Boxes.loose(head(), tiles(model.conditions(), touches::condition),
                    tiles(model.models(), touches::model)));
        }
        Touch next = Buttons.primary(step == Step.PRICE ? Icon.PLUS : Icon.FORWARD,
                frame.say(step == Step.PRICE ? "stockadd.add" : "ask.next"), touches::next);
        next.setDisable(!model.canGoOn());
        page.showFoot(frame.scale(), List.of(), List.of(next));
    }

    private Node tiles(List<StockAddModel.Choice> choices, Consumer<String> pick) {
        return new Columns(frame.scale(), CHOICE_EMS, 3, choices.stream()
                .map(each -> ChoiceTile.one(each.words(), Optional.empty(), each.chosen(),
                        () -> pick.accept(each.key())))
                .toList());
    }
}
