package fencerow.kiosk.outcome;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws what the quiz has shown. */
final class OutcomeView {
    private static final double LINE_EMS = 20;

    private final Frame frame;
    private final Consumer<Place> go;

    OutcomeView(Frame frame, Consumer<Place> go) {
        this.frame = frame;
        this.go = go;
    }

    Page of(OutcomeModel model, double scroll) {
        Page page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        VBox all = Boxes.loose();
        if (model.check().isEmpty() && model.knew().isEmpty()) {
            all.getChildren().add(Words.lead(frame.say("outcome.nothing")));
        } else {
            all.getChildren().add(Words.lead(frame.say(
                    model.check().isEmpty() ? "outcome.all-known" : "outcome.lead")));
        }
        if (!model.check().isEmpty()) {
            all.getChildren().add(section("outcome.check", model.check(), Sign.Kind.UNKNOWN));
        }
        if (!model.knew().isEmpty()) {
            all.getChildren().add(section("outcome.knew", model.knew(), Sign.Kind.YES));
        }
        page.show(all);
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.QUIZ, frame.say("outcome.more"), () -> go.accept(Place.Quiz.NEXT))),
                List.of(Buttons.primary(Icon.LIST, frame.say("results.list"),
                        () -> go.accept(Place.ListPreview.TOP))));
        return page;
    }

    private Node section(String key, List<OutcomeModel.Line> lines, Sign.Kind sign) {
        return Boxes.stack(Words.heading(frame.say(key)),
                new Columns(frame.scale(), LINE_EMS, 2, lines.stream().map(line -> line(line, sign)).toList()));
    }

    private Touch line(OutcomeModel.Line line, Sign.Kind sign) {
        boolean knew = sign == Sign.Kind.YES;
        VBox words = Boxes.tight(Words.of("line-title", line.name()));
        if (!knew) {
            words.getChildren().add(Words.small(frame.say("outcome.said", Map.of("said", line.said()))));
        }
        words.getChildren().add(Words.of("outcome-right",
                frame.say(knew ? "outcome.as-you-said" : "outcome.in-fact", Map.of("right", line.right()))));
        HBox row = Boxes.row(new Sign(sign), Boxes.growing(words), Icon.FORWARD.node());
        row.setAlignment(Pos.CENTER_LEFT);
        return new Touch(line.name() + ". " + line.right(), row, () -> go.accept(Place.Topic.of(line.topic())))
                .styled("unit-line");
    }
}
