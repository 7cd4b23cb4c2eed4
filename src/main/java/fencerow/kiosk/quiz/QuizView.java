package fencerow.kiosk.quiz;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Progress;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws one question, and what is said to the answer. */
final class QuizView {
    private static final double MAIN_EMS = 30;
    private static final double SIDE_EMS = 19;
    private static final double OPTION_EMS = 16;

    private final Frame frame;
    private final QuizTouches touches;
    private final Page page;

    QuizView(Frame frame, double scroll, QuizTouches touches) {
        this.frame = frame;
        this.touches = touches;
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
    }

    Page page() {
        return page;
    }

    void showWorking() {
        page.show(Words.lead(frame.say("results.working")));
    }

    /** There is no question left. */
    void showNoMore() {
        page.show(Words.lead(frame.say("quiz.no-more")));
        page.showFoot(frame.scale(), List.of(),
                List.of(Buttons.primary(Icon.FORWARD, frame.say("quiz.summary"), touches::stop)));
    }

    void show(QuizModel model, boolean sure) {
        model.answer().ifPresentOrElse(reply -> showAnswered(model, reply), () -> showAsked(model, sure));
    }

    private void showAsked(QuizModel model, boolean sure) {
        List<Touch> options = new ArrayList<>();
        model.options().forEach(option -> options.add(
                ChoiceTile.one(option.words(), Optional.empty(), false, () -> touches.pick(option.id()))));
        VBox side = Boxes.card(
                Words.subheading(frame.say("quiz.how-sure")),
                ChoiceTile.several(frame.say("quiz.sure"), Optional.empty(), sure, touches::sure));
        page.show(asked(model, new Columns(frame.scale(), OPTION_EMS, 1, options), side));
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.NOT_SURE, frame.say("ask.not-sure"), touches::notSure),
                        Buttons.secondary(frame.say("quiz.stop"), touches::stop)),
                List.of());
    }

    private Node asked(QuizModel model, Node main, Node side) {
        QuizModel.Progress progress = model.progress();
        VBox beside = Boxes.loose(side);
        model.sketch().ifPresent(sketch -> beside.getChildren().add(sketch.pane()));
        return Boxes.loose(
                new Progress(progress.done(), progress.all(), progress.words()),
                new Split(frame.scale(), Boxes.loose(Words.of("question", model.ask()), main), MAIN_EMS, beside,
                        SIDE_EMS));
    }

    private void showAnswered(QuizModel model, QuizModel.Reply reply) {
        VBox options = Boxes.tight();
        model.options().forEach(option -> options.getChildren().add(told(option)));
        VBox why = Boxes.card(Words.heading(reply.heading()));
        why.getStyleClass().add("reply");
        reply.stress().ifPresent(words -> why.getChildren().add(Words.of(Styles.STRONG, words)));
        reply.refutation().ifPresent(words -> why.getChildren().add(Words.body(words)));
        why.getChildren().add(Words.body(reply.right()));
        page.show(asked(model, Boxes.loose(options, why), side(reply)));
        page.showFoot(frame.scale(),
                reply.last() ? List.of() : List.of(Buttons.secondary(frame.say("quiz.stop"), touches::stop)),
                List.of(reply.last()
                        ? Buttons.primary(Icon.FORWARD, frame.say("quiz.summary"), touches::stop)
                        : Buttons.primary(Icon.FORWARD, frame.say("quiz.next"), touches::next)));
    }

    private Node side(QuizModel.Reply reply) {
        VBox side = Boxes.card();
        reply.atStake().ifPresent(stake -> side.getChildren().add(Boxes.tight(
                Words.subheading(frame.say("quiz.at-stake")), Words.of("stake", stake))));
        side.getChildren().add(
                Buttons.secondary(Icon.LEARN, frame.say("quiz.read"), () -> touches.read(reply.topic())));
        return side;
    }

    /** An option after the answer: right or not, picked or not, by sign and words. */
    private Node told(QuizModel.Option option) {
        HBox row = Boxes.row(new Sign(option.right() ? Sign.Kind.YES : Sign.Kind.NEVER),
                Boxes.growing(Words.of("told-words", option.words())));
        if (option.picked()) {
            row.getChildren().add(Words.of("told-mark", frame.say("quiz.yours")));
        }
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().addAll("told", option.right() ? "right" : option.picked() ? "picked" : "other");
        return row;
    }
}
