package fencerow.kiosk.ask;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Dial;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Progress;
import fencerow.kiosk.kit.Split;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.needs.Question;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Draws one question. */
final class AskView {
    private static final double MAIN_EMS = 30;
    private static final double SIDE_EMS = 16;
    private static final double FIT_EMS = 20;
    private static final double JOB_EMS = 13.5;
    private static final double OPTION_EMS = 14;
    private static final double AMOUNT_EMS = 8;
    private static final double VALUE_EMS = 10;

    private final Frame frame;
    private final AskModel model;
    private final AskModel.Touches touches;
    private final Page page;
    private final Map<String, ChoiceTile> tiles = new LinkedHashMap<>();
    private Optional<Dial> dial = Optional.empty();
    private final Label count = Words.of("count-number", "");
    private final Label fits = Words.body("");
    private final Label settled = Words.small("");

    AskView(Frame frame, double scroll, AskModel model, AskModel.Touches touches) {
        this.frame = frame;
        this.model = model;
        this.touches = touches;
        this.page = new Page(frame.scale(), scroll, frame.say("column.up"), frame.say("column.down"));
        Progress progress = new Progress(
                model.card().done(), model.card().done() + model.card().left(), model.card().progress());
        page.show(isJobs()
                ? Boxes.stack(progress, question())
                : Boxes.loose(progress, new Split(frame.scale(), question(), MAIN_EMS, side(), SIDE_EMS)));
        frame.follow(model.given(), this::tell);
        frame.follow(model.fits(), this::tellFits);
        frame.follow(model.settled(), this::tellSettled);
    }

    Page page() {
        return page;
    }

    private Node question() {
        AskModel.Card card = model.card();
        for (AskModel.Tile each : card.tiles()) {
            Runnable pick = () -> touches.pick(each.key());
            ChoiceTile tile = isSeveral()
                    ? ChoiceTile.several(each.words(), each.hint(), false, pick)
                    : ChoiceTile.one(each.words(), each.hint(), false, pick);
            each.sketch().ifPresent(tile::drawn);
            tiles.put(each.key(), tile);
        }
        VBox words = Boxes.tight(Words.of("question", card.ask()), Words.of("question-why", card.why()));
        VBox all = Boxes.stack(
                isJobs() ? new Split(frame.scale(), words, MAIN_EMS, stillFit(), FIT_EMS) : words,
                columns());
        if (!card.steps().isEmpty()) {
            Dial made = dial(card.steps());
            dial = Optional.of(made);
            all.getChildren().add(made);
        }
        return all;
    }

    private Columns columns() {
        Columns columns = new Columns(frame.scale(), tileEms(), mostColumns(), tiles.values());
        if (isJobs()) {
            columns.near().getStyleClass().add("jobs");
        }
        return columns;
    }

    /** So many tiles that they take the whole width, and all else stands above and below them. */
    private boolean isJobs() {
        return model.card().choose() == Question.Choose.JOBS;
    }

    private Node stillFit() {
        HBox line = Boxes.row(count, Boxes.growing(fits));
        count.setMinWidth(Region.USE_PREF_SIZE);
        return line;
    }

    private boolean isSeveral() {
        return model.card().choose() == Question.Choose.SEVERAL || isJobs();
    }

    private boolean isDrawn() {
        return model.card().tiles().stream().anyMatch(tile -> tile.sketch().isPresent());
    }

    private double tileEms() {
        return switch (model.card().choose()) {
            case JOBS -> JOB_EMS;
            case AMOUNT -> AMOUNT_EMS;
            case ONE, SEVERAL -> OPTION_EMS;
        };
    }

    private int mostColumns() {
        return switch (model.card().choose()) {
            case JOBS -> 4;
            case AMOUNT -> 5;
            case ONE -> 2;
            case SEVERAL -> isDrawn() ? 2 : 3;
        };
    }

    private Dial dial(List<AskModel.Step> steps) {
        List<Touch> less = new ArrayList<>();
        List<Touch> more = new ArrayList<>();
        steps.forEach(step -> (step.steps() < 0 ? less : more)
                .add(Buttons.secondary(step.words(), () -> touches.change(step.steps()))));
        return new Dial(frame.scale(), VALUE_EMS, less, more);
    }

    private Node side() {
        VBox box = Boxes.card(
                Boxes.tight(count, fits), settled,
                Buttons.secondary(Icon.FIT, frame.say("ask.results"), touches::results),
                Buttons.quiet(Icon.LIST, frame.say("ask.answers"), touches::overview));
        box.getStyleClass().add("side");
        return box;
    }

    private void tell(AskModel.Given given) {
        tiles.forEach((key, tile) -> tile.select(given.keys().contains(key)));
        dial.ifPresent(shown -> shown.show(given.amount().orElse(frame.say("ask.no-amount"))));
        List<Touch> aside = new ArrayList<>();
        aside.add(Buttons.secondary(Icon.NOT_SURE, frame.say("ask.not-sure"), touches::notSure)
                .select(given.notSure()));
        if (!model.card().alone()) {
            aside.add(Buttons.secondary(frame.say("ask.skip"), touches::skip));
        } else if (given.answered()) {
            aside.add(Buttons.secondary(Icon.UNDO, frame.say("ask.take-back"), touches::takeBack));
        }
        if (isJobs()) {
            aside.add(Buttons.secondary(Icon.FIT, frame.say("ask.results"), touches::results));
        }
        page.showFoot(frame.scale(), aside, onward(given));
    }

    private List<Touch> onward(AskModel.Given given) {
        boolean none = !given.answered() && model.card().choose() == Question.Choose.SEVERAL;
        if (none) {
            return List.of(Buttons.primary(Icon.FORWARD, frame.say("ask.none"), touches::next));
        }
        if (!given.answered()) {
            return List.of();
        }
        return List.of(model.card().alone()
                ? Buttons.primary(Icon.CHECK, frame.say("ask.done"), touches::next)
                : Buttons.primary(Icon.FORWARD, frame.say("ask.next"), touches::next));
    }

    private void tellFits(Optional<AskModel.Fits> known) {
        known.ifPresent(each -> {
            count.setText(Integer.toString(each.count()));
            fits.setText(each.words());
        });
    }

    private void tellSettled(boolean isSettled) {
        settled.setText(isSettled ? frame.say("ask.settled") : "");
        settled.setManaged(isSettled);
    }
}
