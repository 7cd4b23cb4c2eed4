package fencerow.kiosk.list;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Remark;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the list. */
final class ListView {
    private static final double MAIN_EMS = 32;
    private static final double SIDE_EMS = 21;
    private static final double WORDS_EMS = 20;
    private static final double STRIKE_EMS = 8.5;
    private static final double FURTHER_EMS = 17;

    private final Frame frame;
    private final Consumer<String> toggle;
    private final Page page;

    ListView(Frame frame, double scroll, Consumer<String> toggle, Consumer<Place> go) {
        this.frame = frame;
        this.toggle = toggle;
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        page.show(Words.lead(frame.say("results.working")));
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.FIT, frame.say("list.tell-work"), () -> go.accept(Place.Questions.NEXT)),
                        Buttons.secondary(Icon.QUIZ, frame.say("list.quiz"), () -> go.accept(Place.Quiz.NEXT))),
                List.of(Buttons.primary(Icon.PRINT, frame.say("list.print"), () -> go.accept(new Place.Print()))));
    }

    Page page() {
        return page;
    }

    void show(ListModel model) {
        VBox main = Boxes.loose(Words.lead(model.work()));
        model.stops().forEach(stop -> main.getChildren().add(stop(stop)));
        VBox all = Boxes.loose(new Split(frame.scale(), main, MAIN_EMS, side(model), SIDE_EMS));
        if (!model.further().isEmpty()) {
            all.getChildren().add(further(model.further()));
        }
        page.show(all);
    }

    private Node further(List<String> whats) {
        List<Node> lines = new ArrayList<>();
        whats.forEach(what -> lines.add(Words.small(what)));
        return Boxes.stack(Words.heading(frame.say("list.further")),
                new Columns(frame.scale(), FURTHER_EMS, 3, lines));
    }

    private Node stop(ListModel.StopPart stop) {
        VBox box = Boxes.stack(Words.heading(stop.name()));
        stop.lines().forEach(line -> box.getChildren().add(line(line)));
        return box;
    }

    private Node line(ListModel.Line line) {
        VBox words = Boxes.tight(Words.subheading(line.what()), Words.of("line-how", line.how()));
        line.because().forEach(because -> words.getChildren().add(Words.of("line-because", because)));
        words.getChildren().add(Words.small(frame.say("list.at-stake", Map.of("stake", line.atStake()))));
        Node strike = Buttons.secondary(frame.say("list.strike"), () -> toggle.accept(line.id()));
        strike.setAccessibleHelp(line.what());
        VBox box = Boxes.card(new Split(frame.scale(), words, WORDS_EMS, strike, STRIKE_EMS));
        box.getStyleClass().add("list-line");
        return box;
    }

    private Node side(ListModel model) {
        VBox side = Boxes.loose();
        if (!model.walkAway().isEmpty()) {
            VBox box = Boxes.card(Words.heading(frame.say("list.walk-away")), Words.small(frame.say("list.leave")));
            model.walkAway().forEach(sign -> box.getChildren().add(
                    new Remark(Sign.Kind.NEVER, frame.say(
                            "list.sign", Map.of("what", sign.what(), "bad", sign.bad())))));
            box.getStyleClass().add("walk-away");
            side.getChildren().add(box);
        }
        if (!model.struck().isEmpty()) {
            VBox box = Boxes.stack(Words.heading(frame.say("list.struck")));
            model.struck().forEach(line -> box.getChildren().add(Buttons.secondary(Icon.UNDO,
                    frame.say("list.put-back", Map.of("what", line.what())), () -> toggle.accept(line.id()))));
            side.getChildren().add(box);
        }
        return side;
    }
}
