package fencerow.kiosk.quote;

import fencerow.kiosk.compare.CompareView;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Dial;
import fencerow.kiosk.kit.Ends;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keypad;
import fencerow.kiosk.kit.Ledger;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Progress;
import fencerow.kiosk.kit.Remark;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws the steps of telling of another seller's tractor. */
final class QuoteView {
    private static final int STEPS = 3;
    private static final double SIZE_EMS = 13;
    private static final double STATE_EMS = 15;
    private static final double COMMON_EMS = 8;
    private static final double VALUE_EMS = 9;
    private static final double FIELDS_EMS = 22;
    private static final double KEYPAD_EMS = 18;
    private static final double SEEN_EMS = 20;
    private static final double DIFFERENCE_EMS = 24;
    private static final double NOTES_EMS = 18;

    private final Frame frame;
    private final QuoteTouches touches;
    private final Page page;

    QuoteView(Frame frame, double scroll, QuoteTouches touches) {
        this.frame = frame;
        this.touches = touches;
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
    }

    Page page() {
        return page;
    }

    void show(QuoteModel.Machine model, boolean complete) {
        VBox all = step(0, "machine",
                section("quote.size", choices(model.sizes(), SIZE_EMS, touches::size)),
                section("quote.age", choices(model.states(), STATE_EMS, touches::state)));
        model.hours().ifPresent(hours -> all.getChildren().add(section("quote.meter", hours(hours))));
        page.show(all);
        foot(complete ? List.of(next()) : List.of());
    }

    void show(QuoteModel.Price model) {
        VBox fields = Boxes.stack();
        model.fields().forEach(field -> fields.getChildren().add(field(field)));
        Ledger ledger = new Ledger(frame.scale()).sum(frame.say("quote.out-the-door"), model.sum());
        model.afterTrade().ifPresent(left -> ledger.sum(frame.say("quote.after-trade"), left));
        fields.getChildren().add(ledger.note(frame.say("quote.price-note")));
        Keypad keypad = new Keypad(
                frame.scale(), frame.say("quote.take-away"), touches::digits, touches::takeAway);
        page.show(step(1, "price", new Split(frame.scale(), fields, FIELDS_EMS, keypad, KEYPAD_EMS)));
        foot(List.of(next()));
    }

    void show(QuoteModel.Equipment model) {
        List<Node> features = model.features().stream().map(this::seen).toList();
        page.show(step(2, "equipment", new Columns(frame.scale(), SEEN_EMS, 3, features)));
        foot(List.of(Buttons.primary(Icon.COMPARE, frame.say("quote.beside"), touches::next)));
    }

    void show(QuoteModel.Beside model) {
        VBox summary = Boxes.stack(Words.lead(model.summary()));
        model.against().forEach(each -> summary.getChildren().add(new Remark(Sign.Kind.NEVER, each)));
        VBox notes = Boxes.tight();
        model.notes().forEach(note -> notes.getChildren().add(Words.small(note)));
        Node explained = model.difference()
                .map(each -> (Node) new Split(
                        frame.scale(), difference(each), DIFFERENCE_EMS, notes, NOTES_EMS))
                .orElse(notes);
        page.show(Boxes.loose(summary, explained, new CompareView(frame).of(model.units(), touches::open)));
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.UNDO, frame.say("quote.again"), touches::again),
                        Buttons.secondary(Icon.CLOSE, frame.say("quote.forget"), touches::forget)),
                List.of(Buttons.primary(Icon.LIST, frame.say("results.list"), touches::list)));
    }

    private Node difference(QuoteModel.Difference difference) {
        Ledger ledger = new Ledger(frame.scale());
        difference.lines().forEach(line -> ledger.line(line.what(), line.amount()));
        ledger.sum(frame.say("quote.in-all"), difference.sum());
        return Boxes.card(Words.heading(frame.say("quote.difference")), ledger.note(frame.say("quote.middles")));
    }

    void showWorking() {
        page.show(Words.lead(frame.say("results.working")));
    }

    private VBox step(int done, String key, Node... content) {
        VBox all = Boxes.loose(
                new Progress(done, STEPS, frame.say("quote.step", Map.of("step", done + 1, "of", STEPS))),
                Boxes.tight(Words.of("question", frame.say("quote." + key + ".ask")),
                        Words.of("question-why", frame.say("quote." + key + ".why"))));
        all.getChildren().addAll(content);
        return all;
    }

    private Node section(String key, Node content) {
        return Boxes.stack(Words.subheading(frame.say(key)), content);
    }

    private Node choices(List<QuoteModel.Choice> choices, double ems, Consumer<String> pick) {
        return new Columns(frame.scale(), ems, choices.size(), tiles(choices, pick));
    }

    private static List<ChoiceTile> tiles(List<QuoteModel.Choice> choices, Consumer<String> pick) {
        return choices.stream()
                .map(each -> ChoiceTile.one(each.words(), each.hint(), each.chosen(), () -> pick.accept(each.key())))
                .toList();
    }

    private Node hours(QuoteModel.Hours hours) {
        List<Touch> less = new ArrayList<>();
        List<Touch> more = new ArrayList<>();
        hours.changes().forEach(change -> (change.by() < 0 ? less : more)
                .add(Buttons.secondary(change.words(), () -> touches.changeHours(change.by()))));
        Dial dial = new Dial(frame.scale(), VALUE_EMS, less, more);
        dial.show(hours.words());
        return Boxes.stack(
                new Columns(frame.scale(), COMMON_EMS, 4, tiles(hours.common(), touches::hours)), dial);
    }

    private Touch field(QuoteModel.Field field) {
        Ends row = new Ends(frame.scale(), Words.of("field-name", field.name()),
                Words.of("field-words", field.amount()));
        Touch touch = new Touch(field.name() + ": " + field.amount(), row, () -> touches.line(field.line()));
        touch.getStyleClass().addAll(Styles.FIELD, "price-field");
        if (field.typing()) {
            touch.getStyleClass().add("typing");
        }
        return touch;
    }

    private Node seen(QuoteModel.Seen seen) {
        HBox buttons = Boxes.row(
                answer("quote.there", seen, true), answer("quote.not-there", seen, false));
        VBox box = Boxes.card(
                Boxes.tight(Words.subheading(seen.name()), Words.small(seen.check())), Boxes.filler(), buttons);
        box.getStyleClass().add("seen");
        return box;
    }

    private Touch answer(String key, QuoteModel.Seen seen, boolean there) {
        boolean chosen = seen.there().equals(Optional.of(there));
        return Buttons.secondary(there ? Icon.CHECK : Icon.CLOSE, frame.say(key),
                        () -> touches.seen(seen.feature(), chosen ? Optional.empty() : Optional.of(there)))
                .select(chosen);
    }

    private Touch next() {
        return Buttons.primary(Icon.FORWARD, frame.say("ask.next"), touches::next);
    }

    private void foot(List<Touch> onward) {
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.CLOSE, frame.say("quote.forget"), touches::forget)), onward);
    }
}
