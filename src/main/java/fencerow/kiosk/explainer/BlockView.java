package fencerow.kiosk.explainer;

import fencerow.explainers.Block;
import fencerow.explainers.Inline;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.OfferingTable;
import fencerow.kiosk.kit.Paragraph;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Draws the blocks of an explainer. */
final class BlockView {
    private final ExplainerModel model;
    private final Scale scale;
    private final ExplainerView.Touches touches;

    BlockView(ExplainerModel model, Scale scale, ExplainerView.Touches touches) {
        this.model = model;
        this.scale = scale;
        this.touches = touches;
    }

    Node of(Block block) {
        if (block instanceof Block.Heading heading) {
            Label words = Words.heading(heading.words());
            words.getStyleClass().add("section");
            return words;
        }
        if (block instanceof Block.Paragraph paragraph) {
            return paragraph(paragraph.words());
        }
        if (block instanceof Block.Points points) {
            return points(points);
        }
        if (block instanceof Block.Table table) {
            return table(table);
        }
        return block instanceof Block.OfferingTable ? new OfferingTable(model.offering()) : prices();
    }

    private Paragraph paragraph(List<Inline> runs) {
        Paragraph paragraph = new Paragraph(scale, Styles.BODY);
        for (Inline run : runs) {
            if (run instanceof Inline.TopicLink link) {
                paragraph.addLink(link.words(), () -> touches.topic(link.topic()));
            } else if (run instanceof Inline.WordLink link) {
                paragraph.addLink(link.words(), () -> touches.word(link.glossaryId()));
            } else {
                paragraph.add(run.words(), style(run));
            }
        }
        return paragraph;
    }

    private static String style(Inline run) {
        if (run instanceof Inline.Strong) {
            return Styles.STRONG;
        }
        return run instanceof Inline.Emphasis ? Styles.EMPHASIS : "plain";
    }

    private Node points(Block.Points points) {
        VBox list = Boxes.stack();
        list.getStyleClass().add("points");
        int number = 1;
        for (List<Inline> point : points.points()) {
            Node mark = points.numbered() ? Words.of("point-number", number + ".") : bullet();
            HBox row = new HBox(mark, Boxes.growing(paragraph(point)));
            row.getStyleClass().add("point");
            row.setAlignment(Pos.TOP_LEFT);
            list.getChildren().add(row);
            number++;
        }
        return list;
    }

    private static Node bullet() {
        Region dot = new Region();
        dot.getStyleClass().add("bullet");
        VBox box = new VBox(dot);
        box.getStyleClass().add("bullet-room");
        return box;
    }

    private static Node table(Block.Table table) {
        VBox rows = new VBox();
        rows.getStyleClass().add("table");
        rows.getChildren().add(row(table.head(), "table-head"));
        table.rows().forEach(each -> rows.getChildren().add(row(each, "table-row")));
        return rows;
    }

    private static Node row(List<String> cells, String style) {
        List<Node> words = new ArrayList<>();
        for (String cell : cells) {
            Label label = Words.of("table-cell", cell);
            label.setPrefWidth(1);
            words.add(Boxes.growing(label));
        }
        HBox row = new HBox(words.toArray(Node[]::new));
        row.getStyleClass().add(style);
        return row;
    }

    private Node prices() {
        if (model.prices().isEmpty()) {
            return Boxes.stack();
        }
        VBox all = Boxes.card();
        all.getStyleClass().add("prices");
        model.prices().forEach(line -> all.getChildren().add(Boxes.tight(
                Words.subheading(line.name()), Words.body(line.price()), Words.small(line.by()))));
        return all;
    }
}
