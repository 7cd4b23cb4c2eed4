package fencerow.kiosk.results;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.matching.Asked;
import fencerow.kiosk.matching.MatchParts;
import fencerow.kiosk.matching.Photographs;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws what suits. */
final class ResultsView {
    private static final double MAIN_EMS = 36;
    private static final double SIDE_EMS = 19;

    private final Frame frame;
    private final ResultsTouches touches;
    private final MatchParts parts;
    private final Photographs photographs;
    private final Page page;

    ResultsView(Frame frame, double scroll, ResultsTouches touches) {
        this.frame = frame;
        this.touches = touches;
        this.parts = new MatchParts(frame);
        this.photographs = new Photographs(frame);
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
    }

    Page page() {
        return page;
    }

    void showWorking() {
        page.show(Words.lead(frame.say("results.working")));
    }

    /**
     * Shows it.
     *
     * @param inTheWay what is in the way, where that is no single must-have
     */
    void show(ResultsModel model, Optional<ResultsModel.InTheWay> inTheWay) {
        page.show(new Split(frame.scale(), main(model, inTheWay), MAIN_EMS, side(model.asked()), SIDE_EMS));
        List<Touch> aside = List.of(
                Buttons.secondary(Icon.LIST, frame.say("ask.answers"), () -> touches.go(Place.AllAnswers.TOP)),
                Buttons.secondary(Icon.MONEY, frame.say("results.quote"), () -> touches.go(Place.SecondQuote.FIRST)),
                Buttons.secondary(Icon.TALK, frame.say("results.guide"), touches::guide));
        List<Touch> onward = new ArrayList<>();
        if (model.pinned() > 1) {
            onward.add(Buttons.secondary(Icon.COMPARE,
                    frame.say("results.compare", Map.of("count", model.pinned())),
                    () -> touches.go(Place.SideBySide.TOP)));
        }
        onward.add(Buttons.primary(Icon.LIST, frame.say("results.list"), () -> touches.go(Place.ListPreview.TOP)));
        page.showFoot(frame.scale(), aside, onward);
        photographs.readMissing();
    }

    private Node main(ResultsModel model, Optional<ResultsModel.InTheWay> inTheWay) {
        VBox main = Boxes.loose(MatchParts.count(model.count(), model.summary()));
        model.notes().forEach(note -> main.getChildren().add(Words.body(note)));
        model.rescue().ifPresent(change -> main.getChildren().add(rescue(change)));
        inTheWay.ifPresent(found -> main.getChildren().add(inTheWay(found)));
        VBox cards = Boxes.stack();
        model.cards().forEach(card -> cards.getChildren().add(parts.card(
                card, photographs.findPlace(card.unit()), touches::open, touches::pin)));
        main.getChildren().add(cards);
        model.groups().forEach(group -> main.getChildren().add(group(group)));
        if (model.more() > 0) {
            Touch more = Buttons.secondary(Icon.DOWN,
                    frame.say("results.more", Map.of("count", model.more())), touches::showAll);
            more.setMaxWidth(VBox.USE_PREF_SIZE);
            main.getChildren().add(more);
        }
        return main;
    }

    private Node rescue(Asked.Change change) {
        return Boxes.card(Words.subheading(frame.say("results.none")), parts.changes(List.of(change), touches::toggle));
    }

    private Node inTheWay(ResultsModel.InTheWay found) {
        VBox box = Boxes.stack(Words.subheading(frame.say("results.none-together")));
        found.words().forEach(words -> box.getChildren().add(Words.body(words)));
        found.question().ifPresent(question -> box.getChildren().add(
                Buttons.secondary(Icon.LIST, frame.say("results.change-answer"),
                        () -> touches.go(Place.Questions.only(question)))));
        return Boxes.card(box);
    }

    private Node group(ResultsModel.Group group) {
        VBox box = Boxes.stack(Words.heading(group.heading()));
        group.lines().forEach(line -> box.getChildren().add(parts.line(line, touches::open)));
        return box;
    }

    private Node side(Asked asked) {
        VBox side = Boxes.loose();
        if (!asked.changes().isEmpty()) {
            side.getChildren().add(Boxes.stack(
                    Words.heading(frame.say("results.changes")), parts.changes(asked.changes(), touches::toggle)));
        }
        if (!asked.musts().isEmpty()) {
            side.getChildren().add(Boxes.stack(
                    Boxes.tight(Words.heading(frame.say("results.musts")), Words.small(frame.say("results.musts-how"))),
                    parts.musts(asked, touches::toggle)));
        }
        if (!asked.elsewhere().isEmpty()) {
            VBox box = Boxes.stack(Words.heading(frame.say("results.elsewhere-done")));
            asked.elsewhere().forEach(each ->
                    box.getChildren().add(Boxes.tight(Words.body(each.job()), Words.small(each.way()))));
            side.getChildren().add(box);
        }
        if (!asked.wishes().isEmpty()) {
            side.getChildren().add(Boxes.stack(Words.heading(frame.say("results.wishes")), parts.wishes(asked)));
        }
        Optional<String> budget = asked.budget();
        budget.ifPresent(amount -> side.getChildren().add(
                Boxes.tight(Words.heading(frame.say("results.budget")), Words.body(amount))));
        side.getChildren().add(parts.tradeIn());
        asked.money().ifPresent(more -> side.getChildren().add(Words.body(more)));
        return side;
    }
}
