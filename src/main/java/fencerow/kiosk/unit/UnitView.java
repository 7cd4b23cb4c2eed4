package fencerow.kiosk.unit;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.CautionBox;
import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.Ends;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Ledger;
import fencerow.kiosk.kit.MarkSample;
import fencerow.kiosk.kit.Masonry;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Remark;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.matching.MatchParts;
import fencerow.kiosk.matching.Photograph;
import fencerow.kiosk.matching.UnitCard;
import fencerow.terms.TopicId;
import fencerow.wording.Bill;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Draws one unit. */
final class UnitView {
    private static final double MAIN_EMS = 30;
    private static final double SIDE_EMS = 22;
    private static final double STOP_EMS = 17;
    private static final double DRAWING_EMS = 26;
    private static final double LEGEND_EMS = 15;
    private static final double TRACTOR_MILLIMETRES = 260;
    private static final double PHOTOGRAPH_MILLIMETRES = 110;
    private static final double LEAST_PART_MILLIMETRES = 15;

    private final Frame frame;
    private final Consumer<Place> go;
    private final Runnable pin;
    private final MatchParts parts;
    private final Page page;
    private final StackPane photograph = new StackPane();

    UnitView(Frame frame, double scroll, Consumer<Place> go, Runnable pin) {
        this.frame = frame;
        this.go = go;
        this.pin = pin;
        this.parts = new MatchParts(frame);
        photograph.setManaged(false);
        photograph.setAlignment(Pos.CENTER_LEFT);
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
    }

    Page page() {
        return page;
    }

    void showWorking() {
        page.show(Words.lead(frame.say("results.working")));
    }

    /** Shows the unit's photograph, above its drawing. */
    void show(Photograph picture) {
        picture.findView(Double.MAX_VALUE, frame.scale().px(PHOTOGRAPH_MILLIMETRES)).ifPresent(view -> {
            view.setAccessibleText(frame.say("unit.photograph"));
            photograph.getChildren().setAll(view);
            photograph.setManaged(true);
        });
    }

    void showGone() {
        page.show(Words.lead(frame.say("unit.gone")));
    }

    void show(UnitModel model) {
        UnitCard card = model.card();
        VBox all = Boxes.loose(
                Boxes.stack(parts.head(card), parts.bar(card), Words.lead(model.says())),
                new Split(frame.scale(), main(model), MAIN_EMS, side(model), SIDE_EMS));
        all.getChildren().add(photograph);
        model.drawing().ifPresent(drawn -> all.getChildren().add(drawing(drawn)));
        all.getChildren().add(walk(model));
        if (!model.cautions().isEmpty()) {
            all.getChildren().add(new CautionBox(frame.say("unit.cautions"), model.cautions()));
        }
        page.show(all);
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.PIN, frame.say(card.pinned() ? "results.pinned" : "results.pin"), pin)
                        .select(card.pinned())),
                List.of(Buttons.primary(Icon.LIST, frame.say("results.list"),
                        () -> go.accept(Place.ListPreview.TOP))));
    }

    private Node main(UnitModel model) {
        VBox main = Boxes.loose(section("unit.reasons", MatchParts.scored(model.card())));
        if (!model.causes().isEmpty()) {
            List<Node> causes = new ArrayList<>();
            model.causes().forEach(cause -> causes.add(new Remark(Sign.Kind.NEVER, cause)));
            main.getChildren().add(section("unit.causes", causes));
        }
        if (!model.sums().isEmpty()) {
            main.getChildren().add(sums(model.sums()));
        }
        model.plan().ifPresent(plan -> main.getChildren().add(section("unit.plan", plan(plan))));
        if (!model.instead().isEmpty()) {
            main.getChildren().add(instead(model.instead()));
        }
        return main;
    }

    private Node instead(List<Bill.Line> instead) {
        VBox box = section("unit.instead", instead.stream()
                .map(each -> Boxes.tight(Words.of("line-title", each.what()), Words.small(each.amount())))
                .toList());
        box.getChildren().add(Words.small(frame.say("unit.instead-note")));
        return box;
    }

    private Node sums(List<UnitModel.SumLine> sums) {
        List<Touch> lines = new ArrayList<>();
        for (UnitModel.SumLine sum : sums) {
            VBox words = Boxes.tight(new Ends(frame.scale(),
                    Words.of("line-title", sum.name()), Words.of("line-price", sum.value())));
            sum.notes().forEach(note -> words.getChildren().add(Words.small(note)));
            lines.add(new Touch(sum.name() + ": " + sum.value(), words, () -> go.accept(sum.place()))
                    .styled("unit-line"));
        }
        VBox box = section("unit.sums", lines);
        box.getChildren().add(Words.small(frame.say("unit.sums-note")));
        return box;
    }

    private VBox section(String heading, List<? extends Node> content) {
        VBox box = Boxes.stack(content);
        box.getChildren().add(0, Words.heading(frame.say(heading)));
        return box;
    }

    private List<Node> plan(UnitModel.PlanPart plan) {
        List<Node> all = new ArrayList<>();
        if (plan.lines().isEmpty()) {
            all.add(Words.body(frame.say("unit.nothing")));
        }
        for (UnitModel.PlanLine line : plan.lines()) {
            VBox box = Boxes.tight(new Ends(frame.scale(),
                    Words.of("line-title", line.words()), Words.of("line-price", line.price())));
            line.about().ifPresent(about -> box.getChildren().add(Words.small(about)));
            all.add(box);
        }
        plan.hours().ifPresent(hours -> all.add(Words.body(hours)));
        plan.better().ifPresent(better -> all.add(new Remark(Sign.Kind.EXTRA, better)));
        return all;
    }

    private Node side(UnitModel model) {
        Ledger bill = new Ledger(frame.scale());
        model.bill().lines().forEach(line -> bill.line(line.what(), line.amount()));
        bill.sum(model.bill().sum().what(), model.bill().sum().amount());
        model.notes().forEach(bill::note);
        Ledger figures = new Ledger(frame.scale());
        for (Bill.Line line : model.figures()) {
            figures.line(line.what(), line.amount());
        }
        return Boxes.stack(
                Boxes.card(Words.heading(frame.say("unit.price")), bill, parts.tradeIn()),
                Boxes.card(Words.heading(frame.say("unit.figures")), figures));
    }

    private Node drawing(UnitModel.Drawn drawn) {
        DrawingPane pane = new DrawingPane(drawn.drawing(), drawn.alternative())
                .touchable(drawn.parts(), frame.scale().px(LEAST_PART_MILLIMETRES),
                        part -> go.accept(Place.Topic.of(new TopicId(part))));
        pane.mark(drawn.marks());
        pane.setMaxWidth(frame.scale().px(TRACTOR_MILLIMETRES));
        List<Node> legend = new ArrayList<>();
        for (UnitModel.LegendLine line : drawn.legend()) {
            legend.add(Boxes.row(new MarkSample(line.mark()), Words.body(line.words())));
        }
        return Boxes.card(Words.heading(drawn.alternative()),
                new Split(frame.scale(), pane, DRAWING_EMS, Boxes.stack(legend), LEGEND_EMS));
    }

    private Node walk(UnitModel model) {
        List<Node> stops = new ArrayList<>();
        model.stops().forEach(stop -> stops.add(stop(stop)));
        return Boxes.stack(
                Boxes.tight(Words.heading(frame.say("unit.walk")), Words.small(frame.say("unit.walk-how"))),
                new Masonry(frame.scale(), STOP_EMS, 3, stops));
    }

    private Node stop(UnitModel.StopPart stop) {
        VBox box = Boxes.stack(Words.subheading(stop.name()));
        stop.lines().forEach(line -> box.getChildren().add(line(line)));
        box.getStyleClass().add("walk-stop");
        return box;
    }

    private Touch line(UnitModel.FeatureLine line) {
        VBox words = new VBox(
                Words.of(line.matters() ? "feature-matters" : "feature-name", line.name()),
                Words.of("feature-standing", line.standing()));
        HBox row = Boxes.row(new Sign(line.sign()), Boxes.growing(words));
        row.setAlignment(Pos.CENTER_LEFT);
        return new Touch(line.name() + ": " + line.standing(), row,
                () -> go.accept(Place.Topic.of(line.topic()))).styled("feature-line");
    }
}
