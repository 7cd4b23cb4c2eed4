package fencerow.kiosk.compare;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.ComparisonRow;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Letter;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.VerdictBadge;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.matching.MatchParts;
import fencerow.kiosk.matching.UnitCard;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Draws units beside each other. */
public final class CompareView {
    private static final double HEAD_EMS = 14;
    private static final double CELL_EMS = 11;
    private static final double SAME_EMS = 18;

    private final Frame frame;
    private final MatchParts parts;

    /** In the frame's language and size. */
    public CompareView(Frame frame) {
        this.frame = frame;
        this.parts = new MatchParts(frame);
    }

    /** The units and all that differs; {@code open} leads to one of them. */
    public Node of(CompareModel model, Consumer<UnitId> open) {
        List<Node> heads = new ArrayList<>();
        for (int i = 0; i < model.heads().size(); i++) {
            heads.add(head(i, model.heads().get(i), open));
        }
        VBox all = Boxes.loose(new ComparisonRow(frame.scale(), HEAD_EMS, summary(model), heads));
        model.groups().forEach(group -> all.getChildren().add(group(group)));
        if (!model.same().isEmpty()) {
            List<Node> same = model.same().stream().map(this::same).toList();
            all.getChildren().add(Boxes.stack(
                    Words.heading(frame.say("compare.same")), new Columns(frame.scale(), SAME_EMS, 3, same)));
        }
        return all;
    }

    /** The first difference, which is the price, and what the bars mean. */
    private Node summary(CompareModel model) {
        VBox box = Boxes.loose();
        model.groups().stream().limit(1).flatMap(group -> group.rows().stream().limit(1)).forEach(row ->
                row.difference().ifPresent(difference -> box.getChildren().add(
                        Boxes.tight(Words.body(row.name()), Words.of("compare-first", difference)))));
        box.getChildren().addAll(Boxes.filler(), legend());
        return box;
    }

    /** What the parts of a price bar are. */
    private Node legend() {
        VBox box = Boxes.tight();
        for (String part : List.of("asking", "equipping", "range")) {
            Region swatch = new Region();
            swatch.getStyleClass().addAll("swatch", part);
            HBox row = Boxes.row(swatch, Boxes.growing(Words.small(frame.say("compare.bar." + part))));
            row.setAlignment(Pos.CENTER_LEFT);
            box.getChildren().add(row);
        }
        return box;
    }

    private Node head(int index, UnitCard card, Consumer<UnitId> open) {
        HBox name = Boxes.row(new Letter(index), Boxes.growing(Words.subheading(card.title())));
        name.setAlignment(Pos.TOP_LEFT);
        VBox box = Boxes.card(name, new VerdictBadge(card.verdict(), card.verdictName()),
                Words.of(Styles.NUMBER, card.price()), parts.bar(card),
                Boxes.filler(),
                Buttons.secondary(Icon.FORWARD, frame.say("results.open"), () -> open.accept(card.unit())));
        box.getStyleClass().add("compare-head");
        return box;
    }

    private Node group(CompareModel.Group group) {
        VBox box = Boxes.tight(Words.heading(group.name()));
        group.rows().forEach(row -> box.getChildren().add(row(row)));
        return box;
    }

    private Node row(CompareModel.Row row) {
        VBox name = new VBox(Words.of("compare-name", row.name()));
        row.difference().ifPresent(difference -> name.getChildren().add(Words.of("compare-difference", difference)));
        List<Node> cells = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            cells.add(cell(i, row.cells().get(i)));
        }
        return new ComparisonRow(frame.scale(), CELL_EMS, name, cells);
    }

    private static Node cell(int index, CompareModel.Cell cell) {
        HBox box = new HBox(Words.of("compare-letter", Letter.of(index)));
        cell.sign().ifPresent(sign -> box.getChildren().add(new Sign(sign)));
        box.getChildren().add(Boxes.growing(Words.of("compare-words", cell.words())));
        box.getStyleClass().add("compare-cell");
        box.setAlignment(Pos.TOP_LEFT);
        return box;
    }

    private Node same(CompareModel.Row row) {
        return new VBox(Words.of("compare-name", row.name()), Words.small(row.cells().get(0).words()));
    }
}
