package fencerow.kiosk.stockverify;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the walk around a unit. */
final class VerifyView {
    private static final double CHECK_EMS = 24;

    private final Frame frame;
    private final BiConsumer<String, String> answer;
    private final Runnable done;
    private final Page page;

    VerifyView(Frame frame, double scroll, BiConsumer<String, String> answer, Runnable done) {
        this.frame = frame;
        this.answer = answer;
        this.done = done;
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        page.show(Words.lead(frame.say("results.working")));
    }

    Page page() {
        return page;
    }

    void showGone() {
        page.show(Words.lead(frame.say("book.removed")));
    }

    void show(VerifyModel model) {
        List<Node> stops = new ArrayList<>();
        for (VerifyModel.Stop stop : model.stops()) {
            VBox box = Boxes.stack(Words.subheading(stop.name()));
            stop.checks().forEach(each -> box.getChildren().add(check(each)));
            stops.add(box);
        }
        page.show(Boxes.loose(Boxes.tight(Words.heading(model.title()), Words.body(model.left())),
                new Columns(frame.scale(), CHECK_EMS, 2, stops)));
        page.showFoot(frame.scale(), List.of(),
                List.of(Buttons.primary(Icon.CHECK, frame.say("stockverify.done"), done)));
    }

    private Node check(VerifyModel.Check check) {
        List<Touch> answers = check.answers().stream().map(each -> touch(check, each)).toList();
        VBox words = Boxes.tight(Words.subheading(check.name()), Words.small(check.how()));
        if (!check.wrong().isBlank()) {
            words.getChildren().add(Words.of("wrong-note", check.wrong()));
        }
        VBox box = Boxes.card(words, Boxes.filler(), new Wrap(frame.scale(), answers));
        box.getStyleClass().add("seen");
        return box;
    }

    private Touch touch(VerifyModel.Check check, VerifyModel.Answer each) {
        Touch touch = each.text().equals("no")
                ? Buttons.secondary(Icon.CLOSE, each.words(), () -> answer.accept(check.column(), each.text()))
                : each.text().equals("unknown")
                        ? Buttons.secondary(Icon.NOT_SURE, each.words(),
                                () -> answer.accept(check.column(), each.text()))
                        : Buttons.secondary(Icon.CHECK, each.words(),
                                () -> answer.accept(check.column(), each.text()));
        touch.setAccessibleText(each.words() + ": " + check.name());
        return touch.select(each.chosen());
    }
}
