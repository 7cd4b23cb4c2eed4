package fencerow.kiosk.work;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.CautionBox;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Ends;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Ledger;
import fencerow.kiosk.kit.Remark;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.terms.TopicId;
import fencerow.wording.Bill;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * Draws one calculation. The answer with its cautions stays in sight while the numbers are stepped: beside them on a
 * wide screen, above them on a high one. With larger words there is no room for both, and all is one column: the
 * numbers, then the answer with its cautions; or, with the largest, when the numbers alone fill a screen, the answer
 * first.
 */
final class SheetView {
    private static final double ROOM_BESIDE = 60;
    private static final double ROOM_ABOVE = 40;
    private static final double ANSWER_EMS = 31;
    /** The part of an upright screen that the answer may take. */
    private static final double ANSWER_SHARE = 0.36;

    private final Frame frame;
    private final SheetModel model;
    private final SheetModel.Touches touches;
    private final VBox answer = Boxes.stack();
    private final StackPane picture = new StackPane();
    private final BorderPane node = new BorderPane();
    private final SheetFields fields;
    private final Column column;

    SheetView(Frame frame, double scroll, SheetModel model, SheetModel.Touches touches) {
        this.frame = frame;
        this.model = model;
        this.touches = touches;
        this.fields = new SheetFields(frame, model.card(), touches);
        answer.getStyleClass().add("answer-part");
        node.getStyleClass().add(Styles.PAGE);
        VBox asked = Boxes.stack(Words.of("ask", model.card().ask()));
        model.card().forUnit().ifPresent(words -> asked.getChildren().add(Words.of(Styles.FOLIO, words)));
        VBox numbers = Boxes.stack(fields.node());
        if (!frame.isLandscape() && frame.widthInEms() >= ROOM_ABOVE) {
            numbers.getChildren().add(picture);
            fields.fold().ifPresent(numbers.getChildren()::add);
            column = column(numbers, scroll);
            Column above = column(Boxes.stack(asked, answer), 0);
            above.setMaxHeight(Region.USE_PREF_SIZE);
            above.prefHeightProperty().bind(node.heightProperty().multiply(ANSWER_SHARE));
            above.minHeightProperty().bind(above.prefHeightProperty());
            node.setCenter(Boxes.stack(above, Boxes.rule(), Boxes.growing(column)));
        } else if (frame.widthInEms() >= ROOM_BESIDE) {
            numbers.getChildren().add(picture);
            fields.fold().ifPresent(numbers.getChildren()::add);
            column = column(numbers, scroll);
            Column beside = column(Boxes.stack(asked, answer), 0);
            beside.setMinWidth(ANSWER_EMS * frame.scale().em());
            beside.setMaxWidth(ANSWER_EMS * frame.scale().em());
            HBox both = new HBox(Boxes.growing(column), beside);
            both.getStyleClass().add("sheet-sides");
            node.setCenter(both);
        } else if (frame.isLandscape() && frame.widthInEms() >= ROOM_ABOVE) {
            VBox all = Boxes.stack(asked, numbers, answer, picture);
            fields.fold().ifPresent(all.getChildren()::add);
            column = column(all, scroll);
            node.setCenter(column);
        } else {
            numbers.getChildren().add(picture);
            fields.fold().ifPresent(numbers.getChildren()::add);
            column = column(Boxes.loose(Boxes.stack(asked, answer), numbers), scroll);
            node.setCenter(column);
        }
        frame.follow(model.shown(), this::tell);
    }

    private Column column(Node content, double position) {
        StackPane padded = new StackPane(content);
        padded.getStyleClass().add("page-content");
        return new Column(frame.scale(), padded, position, frame.say("column.up"), frame.say("column.down"));
    }

    Node node() {
        return node;
    }

    double position() {
        return column.position();
    }

    private void tell(SheetModel.Shown shown) {
        fields.show(shown.values());
        List<Node> parts = new ArrayList<>();
        parts.add(result(shown.answer()));
        shown.answer().warnings().forEach(each -> parts.add(new Remark(Sign.Kind.UNKNOWN, each)));
        parts.add(new CautionBox(frame.say("worksheet.cautions"), shown.answer().cautions()));
        if (!shown.answer().more().isEmpty()) {
            parts.add(ledger(shown.answer().more()));
        }
        answer.getChildren().setAll(parts);
        picture.getChildren().clear();
        shown.answer().picture().ifPresent(each ->
                picture.getChildren().add(new PictureView(frame.scale()).of(each)));
        picture.setManaged(!picture.getChildren().isEmpty());
        column.requestLayout();
        node.setBottom(foot(shown.touched()));
    }

    private Node result(SheetModel.Answer shown) {
        VBox box = Boxes.tight();
        if (!shown.name().isEmpty()) {
            box.getChildren().add(Words.body(shown.name()));
        }
        if (!shown.amount().isEmpty()) {
            box.getChildren().add(Words.of("answer-amount", shown.amount()));
        }
        shown.refused().ifPresent(each -> box.getChildren().add(new Remark(Sign.Kind.NEVER, each)));
        shown.says().forEach(each -> box.getChildren().add(Words.of("answer-says", each)));
        return box;
    }

    private Ledger ledger(List<Bill.Line> lines) {
        Ledger ledger = new Ledger(frame.scale());
        lines.forEach(line -> ledger.line(line.what(), line.amount()));
        return ledger;
    }

    private Node foot(boolean touched) {
        List<Touch> aside = new ArrayList<>();
        if (!model.card().topics().isEmpty()) {
            aside.add(Buttons.secondary(Icon.LEARN, frame.say("worksheet.what"), touches::what));
        }
        if (touched) {
            aside.add(Buttons.secondary(Icon.UNDO, frame.say("worksheet.reset"), touches::reset));
        }
        Ends foot = new Ends(frame.scale(), new Wrap(frame.scale(), aside), new Wrap(frame.scale(),
                List.of(Buttons.primary(Icon.NOT_SURE, frame.say("worksheet.why"), touches::why)))).toTheRight();
        foot.getStyleClass().add("foot");
        return foot;
    }

    /** What stands on the sheet that says why. */
    Node why(SheetModel.Why why) {
        VBox sources = Boxes.tight(Words.subheading(frame.say("worksheet.sources")));
        why.sources().forEach(each -> sources.getChildren().add(Words.small(each)));
        return Boxes.loose(
                Boxes.tight(Words.subheading(frame.say("worksheet.how")), Words.body(why.how())),
                sources,
                Boxes.tight(Words.subheading(frame.say("worksheet.used")), ledger(why.used())),
                Boxes.tight(Words.subheading(frame.say("worksheet.allowed")), ledger(why.allowed())));
    }

    /** Explainers to choose from. */
    Node topics(List<SheetModel.Link> topics, Consumer<TopicId> go) {
        return Boxes.stack(topics.stream()
                .map(each -> Buttons.secondary(Icon.LEARN, each.title(), () -> go.accept(each.topic())))
                .toList());
    }
}
