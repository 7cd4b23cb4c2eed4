package fencerow.kiosk.print;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.PaperSketch;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Words;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws how printing stands. */
final class PrintView {
    private static final double WORDS_EMS = 24;
    private static final double PAPER_EMS = 24;

    private final Frame frame;
    private final PrintTouches touches;
    private final Page page;

    PrintView(Frame frame, PrintTouches touches) {
        this.frame = frame;
        this.touches = touches;
        this.page = new Page(frame.scale(), 0, frame.say("column.up"), frame.say("column.down"));
    }

    Page page() {
        return page;
    }

    void show(PrintModel model) {
        if (model instanceof PrintModel.Ready ready) {
            showReady(ready);
        } else if (model instanceof PrintModel.Working working) {
            page.show(notice(Icon.PRINT, working.words(), frame.say("print.wait")));
            page.showFoot(frame.scale(), List.of(), List.of());
        } else if (model instanceof PrintModel.Done done) {
            page.show(notice(Icon.CHECK, done.words(), done.what()));
            page.showFoot(frame.scale(),
                    List.of(Buttons.secondary(Icon.FIT, frame.say("ask.results"), touches::results)),
                    List.of(Buttons.primary(Icon.START_OVER, frame.say("print.finish"), touches::finish)));
        } else if (model instanceof PrintModel.Failed failed) {
            page.show(notice(Icon.CAUTION, failed.words(), failed.what()));
            page.showFoot(frame.scale(),
                    List.of(Buttons.secondary(Icon.LIST, frame.say("print.back"), touches::list)),
                    List.of(Buttons.primary(Icon.PRINT, frame.say("print.again"), touches::again)));
        }
    }

    private void showReady(PrintModel.Ready ready) {
        VBox words = Boxes.loose(
                Words.lead(frame.say(ready.saves() ? "print.will-save" : "print.will-print")),
                ChoiceTile.several(frame.say("print.further"), Optional.of(frame.say("print.further-hint")),
                        ready.further(), touches::further),
                Words.small(frame.say("print.private")));
        page.show(new Split(frame.scale(), words, WORDS_EMS,
                new PaperSketch(ready.heading(), ready.lines()), PAPER_EMS));
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.LIST, frame.say("print.back"), touches::list)),
                List.of(Buttons.primary(Icon.PRINT,
                        frame.say(ready.saves() ? "print.save" : "print.print"), touches::print)));
    }

    private static Node notice(Icon icon, String words, String what) {
        VBox box = Boxes.stack(icon.node(), Words.of("question", words), Words.lead(what));
        box.getStyleClass().addAll(Styles.MEASURE, "notice");
        return box;
    }
}
