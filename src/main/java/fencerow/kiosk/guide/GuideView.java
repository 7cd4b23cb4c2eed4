package fencerow.kiosk.guide;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Ends;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.matching.Asked;
import fencerow.kiosk.matching.MatchParts;
import fencerow.kiosk.matching.UnitLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws what if. */
final class GuideView {
    private static final double MAIN_EMS = 34;
    private static final double SIDE_EMS = 22;
    private static final double STEP_EMS = 9;

    private final Frame frame;
    private final GuideTouches touches;
    private final MatchParts parts;
    private final Page page;

    GuideView(Frame frame, double scroll, GuideTouches touches) {
        this.frame = frame;
        this.touches = touches;
        this.parts = new MatchParts(frame);
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        page.show(Words.lead(frame.say("results.working")));
    }

    Page page() {
        return page;
    }

    void show(GuideModel model) {
        page.show(new Split(frame.scale(), main(model), MAIN_EMS, side(model), SIDE_EMS));
        List<Touch> aside = new ArrayList<>();
        aside.add(Buttons.secondary(Icon.LEARN, frame.say("guide.look-up"), () -> touches.go(Place.Find.EMPTY)));
        if (model.pinned() > 1) {
            aside.add(Buttons.secondary(Icon.COMPARE, frame.say("results.compare", Map.of("count", model.pinned())),
                    () -> touches.go(Place.SideBySide.TOP)));
        }
        if (model.pinned() > 0) {
            aside.add(Buttons.secondary(Icon.PRINT, frame.say("guide.units-sheet"), touches::unitsSheet));
        }
        List<Touch> onward = new ArrayList<>();
        if (!model.changed().isEmpty()) {
            onward.add(Buttons.secondary(Icon.UNDO, frame.say("guide.as-it-was"), () -> touches.handBack(true)));
        }
        onward.add(Buttons.primary(Icon.CHECK, frame.say("guide.hand-back"), () -> touches.handBack(false)));
        page.showFoot(frame.scale(), aside, onward);
    }

    private Node main(GuideModel model) {
        VBox main = Boxes.loose(MatchParts.count(model.count(), model.summary()));
        if (!model.changed().isEmpty()) {
            VBox changed = Boxes.card(Words.subheading(frame.say("guide.since")));
            model.changed().forEach(each -> changed.getChildren().add(Words.body(each)));
            main.getChildren().add(changed);
        }
        VBox lines = Boxes.stack();
        model.lines().forEach(line -> lines.getChildren().add(line(line)));
        main.getChildren().add(lines);
        return main;
    }

    private Node line(UnitLine line) {
        Touch pin = Buttons.icon(Icon.PIN,
                frame.say(line.pinned() ? "guide.unpin" : "guide.pin", Map.of("unit", line.title())),
                () -> touches.pin(line.unit()));
        pin.getStyleClass().add("pin");
        pin.select(line.pinned());
        HBox row = Boxes.row(Boxes.growing(parts.line(line, touches::open)), pin);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Node side(GuideModel model) {
        VBox side = Boxes.loose(budget(model));
        Asked asked = model.asked();
        if (!asked.musts().isEmpty()) {
            side.getChildren().add(Boxes.stack(
                    Words.heading(frame.say("guide.what-if")), parts.musts(asked, touches::toggle)));
        }
        if (!asked.changes().isEmpty()) {
            side.getChildren().add(Boxes.stack(
                    Words.heading(frame.say("results.changes")), parts.changes(asked.changes(), touches::toggle)));
        }
        asked.money().ifPresent(more -> side.getChildren().add(Words.body(more)));
        return side;
    }

    private Node budget(GuideModel model) {
        List<Touch> steps = new ArrayList<>();
        model.steps().forEach(step -> steps.add(Buttons.secondary(step.words(), () -> touches.budget(step.by()))));
        return Boxes.stack(new Ends(frame.scale(), Words.heading(frame.say("results.budget")),
                Words.of("budget-words", model.budget())), new Columns(frame.scale(), STEP_EMS, 2, steps));
    }
}
