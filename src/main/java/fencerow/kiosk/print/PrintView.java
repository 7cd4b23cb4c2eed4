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
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
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

    /** Shows how it stands, and the code to come back with where there is something to say of it. */
    void show(PrintModel model, Optional<CodeCard> code) {
        if (model instanceof PrintModel.Ready ready) {
            showReady(ready, code);
        } else if (model instanceof PrintModel.Working working) {
            show(notice(Icon.PRINT, working.words(), working.what()), List.of(), List.of());
        } else if (model instanceof PrintModel.Waiting waiting) {
            show(notice(Icon.CAUTION, waiting.words(), waiting.what(), code),
                    List.of(Buttons.secondary(Icon.CLOSE, frame.say("print.take-back"), touches::takeBack)),
                    List.of(saveInstead()));
        } else if (model instanceof PrintModel.Done done) {
            show(notice(Icon.CHECK, done.words(), done.what(), code),
                    List.of(Buttons.secondary(Icon.FIT, frame.say("ask.results"), touches::results)),
                    List.of(Buttons.primary(Icon.START_OVER, frame.say("print.finish"), touches::finish)));
        } else if (model instanceof PrintModel.Failed failed) {
            List<Touch> back = new ArrayList<>();
            back.add(Buttons.secondary(Icon.LIST, frame.say("print.back"), touches::list));
            if (failed.canSave()) {
                back.add(saveInstead());
            }
            show(notice(Icon.CAUTION, failed.words(), failed.what(), code), back,
                    List.of(Buttons.primary(Icon.PRINT, frame.say("print.again"), touches::again)));
        }
    }

    private Touch saveInstead() {
        return Buttons.secondary(Icon.LIST, frame.say("print.save-instead"), touches::save);
    }

    private void show(Node notice, List<Touch> back, List<Touch> on) {
        page.show(notice);
        page.showFoot(frame.scale(), back, on);
    }

    private void showReady(PrintModel.Ready ready, Optional<CodeCard> code) {
        VBox words = Boxes.loose(Words.lead(frame.say(ready.saves() ? "print.will-save" : "print.will-print")));
        ready.notice().ifPresent(notice -> words.getChildren().add(
                Boxes.card(Boxes.row(Icon.CAUTION.node(), Boxes.growing(Words.body(notice))))));
        VBox extras = Boxes.stack(Words.subheading(frame.say("print.more")));
        ready.more().forEach(extra -> extras.getChildren().add(ChoiceTile.several(
                extra.words(), Optional.of(extra.hint()), extra.chosen(), () -> touches.wanted(extra.part()))));
        words.getChildren().add(extras);
        code.ifPresent(card -> words.getChildren().add(card(card)));
        words.getChildren().add(
                Words.small(frame.say(ready.saves() ? "print.private-saved" : "print.private")));
        page.show(new Split(frame.scale(), words, WORDS_EMS,
                new PaperSketch(ready.heading(), ready.lines()), PAPER_EMS));
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.LIST, frame.say("print.back"), touches::list)),
                List.of(Buttons.primary(Icon.PRINT,
                        frame.say(ready.saves() ? "print.save" : "print.print"), touches::print)));
    }

    private Node card(CodeCard card) {
        VBox box = Boxes.card(Words.subheading(frame.say("print.code.heading")));
        card.code().ifPresent(code -> box.getChildren().add(Words.of("question", code)));
        box.getChildren().add(Words.body(card.words()));
        if (card.offer()) {
            box.getChildren().add(Boxes.row(
                    Buttons.secondary(Icon.PLUS, frame.say("print.code.make"), touches::makeCode)));
        }
        return box;
    }

    private Node notice(Icon icon, String words, String what, Optional<CodeCard> code) {
        VBox box = notice(icon, words, what);
        code.ifPresent(card -> box.getChildren().add(card(card)));
        return box;
    }

    private static VBox notice(Icon icon, String words, String what) {
        VBox box = Boxes.stack(icon.node(), Words.of("question", words), Words.lead(what));
        box.getStyleClass().addAll(Styles.MEASURE, "notice");
        return box;
    }
}
