package fencerow.kiosk.answers;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws all questions with their answers. */
final class AnswersView {
    private static final double ROW_EMS = 16;

    private AnswersView() {}

    static Page of(AnswersModel model, Frame frame, double scroll, Consumer<Place> go) {
        Page page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        List<Node> parts = new ArrayList<>();
        parts.add(model.given().isEmpty()
                ? Words.lead(frame.say("answers.none"))
                : rows(model.given(), "answered", frame, go));
        if (!model.open().isEmpty()) {
            parts.add(Boxes.stack(Words.heading(frame.say("answers.left")), rows(model.open(), "open", frame, go)));
        }
        page.show(Boxes.loose(parts.toArray(Node[]::new)));
        page.showFoot(frame.scale(), List.of(),
                List.of(Buttons.primary(Icon.FIT, frame.say("ask.results"), () -> go.accept(Place.Results.TOP))));
        return page;
    }

    private static Node rows(List<AnswersModel.Row> rows, String style, Frame frame, Consumer<Place> go) {
        return new Columns(frame.scale(), ROW_EMS, 3, rows.stream().map(row -> row(row, style, go)).toList());
    }

    private static Touch row(AnswersModel.Row row, String style, Consumer<Place> go) {
        VBox words = Boxes.tight(Words.small(row.ask()), Words.of("answer-words", row.answer()));
        words.setAlignment(Pos.CENTER_LEFT);
        return new Touch(row.ask() + " " + row.answer(), words,
                () -> go.accept(Place.Questions.only(row.question()))).styled("answer", style);
    }
}
