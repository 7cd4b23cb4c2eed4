package fencerow.kiosk.stockchanges;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Words;
import javafx.scene.layout.VBox;

/** Draws changes one below the other. */
final class StockChangesView {
    private final Frame frame;
    private final Page page;

    StockChangesView(Frame frame, double scroll) {
        this.frame = frame;
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        page.show(Words.lead(frame.say("results.working")));
    }

    Page page() {
        return page;
    }

    void show(StockChangesModel model) {
        VBox all = Boxes.stack();
        if (model.lines().isEmpty()) {
            all.getChildren().add(Words.lead(frame.say("stockchanges.none")));
        }
        for (StockChangesModel.Line line : model.lines()) {
            all.getChildren().addAll(Boxes.tight(Words.of("line-title", line.change()), Words.body(line.unit()),
                    Words.small(line.when())), Boxes.rule());
        }
        page.show(all);
    }
}
