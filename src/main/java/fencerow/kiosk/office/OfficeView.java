package fencerow.kiosk.office;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.office.OfficeModel.Tile;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Draws the tiles. */
final class OfficeView {
    private static final double TILE_EMS = 13;
    private static final int MOST_COLUMNS = 4;

    private final Frame frame;
    private final Consumer<Tile> touched;
    private final Page page;

    OfficeView(Frame frame, Consumer<Tile> touched) {
        this.frame = frame;
        this.touched = touched;
        this.page = new Page(frame.scale(), 0, frame.say("column.up"), frame.say("column.down"));
    }

    Page page() {
        return page;
    }

    void show(OfficeModel model) {
        VBox all = Boxes.loose();
        model.notice().ifPresent(notice -> all.getChildren().add(Boxes.card(Words.lead(notice))));
        all.getChildren().addAll(
                new Columns(frame.scale(), TILE_EMS, MOST_COLUMNS, model.tiles().entrySet().stream()
                        .map(entry -> tile(entry.getKey(), entry.getValue()))
                        .toList()),
                Boxes.tight(Words.body(model.signOut()), Words.small(model.version())));
        page.show(all);
    }

    private Touch tile(Tile tile, String hint) {
        String name = frame.say("office.tile." + tile.id() + ".name");
        VBox words = Boxes.stack(tile.icon().node(), Words.subheading(name), Words.small(hint));
        words.setAlignment(Pos.TOP_LEFT);
        return new Touch(name + ". " + hint, words, () -> touched.accept(tile)).styled("door");
    }

    /** Lays a sheet with what is wrong with the content. */
    void lay(OfficeModel.Problems problems) {
        VBox all = Boxes.loose(Words.body(
                frame.say(problems.lines().isEmpty() ? "staff.no-problems" : "staff.problems")));
        for (OfficeModel.ProblemLine line : problems.lines()) {
            VBox box = Boxes.tight();
            add(box, line.where(), Styles.SUBHEADING);
            add(box, line.what(), Styles.BODY);
            add(box, line.whatToDo(), Styles.SMALL);
            all.getChildren().addAll(box, Boxes.rule());
        }
        frame.lay(frame.say("office.tile.problems.name"), all);
    }

    private static void add(VBox box, String words, String style) {
        if (!words.isBlank()) {
            Label label = Words.of(style, words);
            box.getChildren().add(label);
        }
    }
}
