package fencerow.kiosk.work;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Stepper;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Draws what can be set on a calculation, and shows what it is set to; the parts stay, so that a finger can too. */
final class SheetFields {
    private static final double FIELD_EMS = 15;
    private static final double TILE_EMS = 8;
    private static final double SHEET_TILE_EMS = 15;
    private static final int MOST_COLUMNS = 2;
    /** More options than this open on a sheet of their own. */
    private static final int FEW = 3;

    private final Frame frame;
    private final SheetModel.Card card;
    private final SheetModel.Touches touches;
    private final Map<String, Consumer<SheetModel.Value>> shows = new LinkedHashMap<>();
    private final Node node;

    SheetFields(Frame frame, SheetModel.Card card, SheetModel.Touches touches) {
        this.frame = frame;
        this.card = card;
        this.touches = touches;
        List<Node> fields = new ArrayList<>();
        card.fields().forEach(field -> fields.add(field(field)));
        this.node = new Columns(frame.scale(), FIELD_EMS, MOST_COLUMNS, fields);
    }

    Node node() {
        return node;
    }

    /** The button that brings further fields, or puts them away. */
    Optional<Touch> fold() {
        if (card.hidden()) {
            return Optional.of(Buttons.secondary(
                    Icon.DOWN, frame.say("worksheet.more"), () -> touches.showAll(true)));
        }
        return card.folds()
                ? Optional.of(Buttons.secondary(
                        Icon.UP, frame.say("worksheet.fewer"), () -> touches.showAll(false)))
                : Optional.empty();
    }

    void show(Map<String, SheetModel.Value> values) {
        shows.forEach((id, show) -> Optional.ofNullable(values.get(id)).ifPresent(show));
    }

    private Node field(SheetModel.Field field) {
        if (field instanceof SheetModel.Field.Count number) {
            return number(number);
        }
        SheetModel.Field.Pick pick = (SheetModel.Field.Pick) field;
        return pick.options().size() <= FEW ? tiles(pick) : opening(pick);
    }

    private Node number(SheetModel.Field.Count number) {
        Stepper stepper = new Stepper(
                frame.say("worksheet.less", Map.of("name", number.name())),
                frame.say("worksheet.more-of", Map.of("name", number.name())),
                steps -> touches.move(number.id(), steps));
        Label note = Words.small("");
        shows.put(number.id(), value -> {
            stepper.show(value.words(), value.canLess(), value.canMore());
            note.setText(value.note());
        });
        return box(number.name(), stepper, note);
    }

    private Node tiles(SheetModel.Field.Pick pick) {
        Map<String, ChoiceTile> tiles = new LinkedHashMap<>();
        pick.options().forEach(option -> tiles.put(option.id(), tile(pick, option, false)));
        shows.put(pick.id(), value -> tiles.forEach((id, tile) -> tile.select(id.equals(value.key()))));
        return box(pick.name(), new Columns(frame.scale(), TILE_EMS, tiles.size() == 2 ? 2 : 1, tiles.values()));
    }

    private ChoiceTile tile(SheetModel.Field.Pick pick, SheetModel.Option option, boolean chosen) {
        return ChoiceTile.one(
                option.words(), Optional.empty(), chosen, () -> touches.pick(pick.id(), option.id()));
    }

    private Node opening(SheetModel.Field.Pick pick) {
        Label words = Words.of("field-words", "");
        List<String> chosen = new ArrayList<>();
        Touch touch = new Touch(pick.name(), words, () -> frame.lay(pick.name(), sheet(pick, chosen)))
                .styled(Styles.FIELD, "pick-field");
        shows.put(pick.id(), value -> {
            words.setText(value.words());
            touch.setAccessibleText(value.words() + ". " + frame.say(
                    "worksheet.change", Map.of("name", pick.name(), "value", value.words())));
            chosen.clear();
            chosen.add(value.key());
        });
        return box(pick.name(), touch);
    }

    private Node sheet(SheetModel.Field.Pick pick, List<String> chosen) {
        return new Columns(frame.scale(), SHEET_TILE_EMS, MOST_COLUMNS, pick.options().stream()
                .map(option -> tile(pick, option, chosen.contains(option.id())))
                .toList());
    }

    private static Node box(String name, Node... parts) {
        VBox box = Boxes.tight(Words.of("input-name", name));
        box.getChildren().addAll(parts);
        return box;
    }
}
