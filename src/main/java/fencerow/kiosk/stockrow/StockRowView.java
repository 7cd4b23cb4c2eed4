package fencerow.kiosk.stockrow;

import fencerow.desk.StockColumn;
import fencerow.kiosk.bookkeeping.Typed;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Ends;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Keypad;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws a unit's fields, and the sheet on which one is changed. */
final class StockRowView {
    private static final double FIELD_EMS = 20;
    private static final double CHOICE_EMS = 13;
    private static final double KEYS_MILLIMETRES = 95;

    private final Frame frame;
    private final StockRowTouches touches;
    private final Page page;

    StockRowView(Frame frame, double scroll, StockRowTouches touches) {
        this.frame = frame;
        this.touches = touches;
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        page.show(Words.lead(frame.say("results.working")));
    }

    Page page() {
        return page;
    }

    void showGone() {
        page.show(Boxes.stack(Words.lead(frame.say("book.removed")),
                Boxes.row(Buttons.secondary(Icon.LIST, frame.say("stocklist.title"), touches::list))));
    }

    void show(StockRowModel model) {
        VBox head = Boxes.tight(Words.heading(model.title()), Words.small(model.about()));
        model.note().ifPresent(note -> head.getChildren().add(Words.of("wrong-note", note)));
        VBox all = Boxes.loose(head, Boxes.stack(Words.subheading(model.sale()),
                new Wrap(frame.scale(), model.ways().stream().map(this::way).toList())));
        for (StockRowModel.Group group : model.groups()) {
            all.getChildren().add(Boxes.stack(Words.subheading(group.name()),
                    new Columns(frame.scale(), FIELD_EMS, 2, group.fields().stream().map(this::field).toList())));
        }
        page.show(all);
        List<Touch> onward = new ArrayList<>();
        if (model.unknowns() > 0) {
            onward.add(Buttons.primary(Icon.LOOK,
                    frame.say("stockrow.verify", Map.of("count", model.unknowns())), touches::verify));
        }
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.LIST, frame.say("stocklist.title"), touches::list)), onward);
    }

    private Touch way(StockRowModel.Way way) {
        return switch (way) {
            case HOLD -> Buttons.secondary(Icon.PIN, frame.say("stockrow.hold"), touches::hold);
            case SELL -> Buttons.secondary(Icon.MONEY, frame.say("stockrow.sell"), touches::sell);
            case RELEASE -> Buttons.secondary(Icon.UNDO, frame.say("stockrow.release"), touches::release);
        };
    }

    private Touch field(StockRowModel.Field field) {
        Ends row = new Ends(frame.scale(), Words.of("field-name", field.name()),
                Words.of("field-words", field.value()));
        Touch touch = new Touch(field.name() + ": " + field.value(), row, () -> touches.edit(field.column()));
        touch.getStyleClass().addAll(Styles.FIELD, "price-field");
        if (field.wrong()) {
            touch.getStyleClass().add("wrong");
        }
        return touch;
    }

    /** Lays the sheet on which a field is changed. */
    void lay(StockRowModel.Editing editing) {
        VBox sheet = Boxes.loose(Words.body(editing.note()));
        StockColumn column = editing.column();
        sheet.getChildren().addAll(switch (column.kind()) {
            case CHOICE, EQUIPMENT, PICTURE -> List.of(choices(editing));
            case WORDS -> List.of(severalChoices(editing), keep(column, editing.text()));
            case WHOLE, DOLLARS -> List.of(number(editing));
        });
        frame.lay(editing.name(), sheet);
    }

    private Node choices(StockRowModel.Editing editing) {
        return new Columns(frame.scale(), CHOICE_EMS, 2, editing.choices().stream()
                .map(each -> ChoiceTile.one(each.words(), Optional.empty(), each.chosen(),
                        () -> touches.keep(editing.column(), each.text())))
                .toList());
    }

    private Node severalChoices(StockRowModel.Editing editing) {
        return new Columns(frame.scale(), CHOICE_EMS, 2, editing.choices().stream()
                .map(each -> ChoiceTile.several(each.words(), Optional.empty(), each.chosen(),
                        () -> touches.draft(editing.column(), StockRowInteractor.toggled(editing.text(), each.text()))))
                .toList());
    }

    private HBox keep(StockColumn column, String text) {
        return Boxes.row(Buttons.primary(Icon.CHECK, frame.say("stockrow.keep"), () -> touches.keep(column, text)));
    }

    private Node number(StockRowModel.Editing editing) {
        StockColumn column = editing.column();
        var text = new SimpleStringProperty(editing.text());
        var shown = new SimpleStringProperty();
        text.subscribe(now -> shown.set(now.isEmpty() || column.kind() != StockColumn.Kind.DOLLARS
                ? now
                : frame.phrases().money(Money.ofDollars(Long.parseLong(now)))));
        Keypad keys = new Keypad(frame.scale(), frame.say("keyboard.backspace"),
                digits -> text.set(StockRowInteractor.typed(text.get(), digits, column)),
                () -> text.set(Typed.shorter(text.get())));
        keys.setPrefWidth(frame.scale().px(KEYS_MILLIMETRES));
        return Boxes.stack(Typed.field(shown, false), keys, Boxes.row(
                Buttons.primary(Icon.CHECK, frame.say("stockrow.keep"), () -> touches.keep(column, text.get()))));
    }

    /** Lays the sheet on which a day is chosen. */
    void layDays(List<StockRowModel.HoldDay> days) {
        frame.lay(frame.say("stockrow.hold"), Boxes.stack(Words.body(frame.say("stockrow.hold-how")),
                new Columns(frame.scale(), CHOICE_EMS, 2, days.stream()
                        .map(day -> ChoiceTile.one(day.words(), Optional.empty(), false,
                                () -> touches.holdUntil(day.until())))
                        .toList())));
    }
}
