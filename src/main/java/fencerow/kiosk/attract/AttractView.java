package fencerow.kiosk.attract;

import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** Draws it: one belief at a time, no sound, no movement but the change every few seconds. */
final class AttractView {
    private static final Duration EACH = Duration.seconds(7);

    private final AttractModel model;
    private final Label belief = Words.of("attract-belief", "");
    private final Label truth = Words.lead("");
    private final HBox steps = Boxes.row();
    private final Timeline loop = new Timeline(new KeyFrame(EACH, done -> next()));
    private final Label start;
    private final Touch node;
    private int shown;

    AttractView(AttractModel model, Runnable touched) {
        this.model = model;
        this.start = Words.heading(model.start());
        Region mark = new Region();
        mark.getStyleClass().add("attract-mark");
        VBox turn = model.turns().isEmpty()
                ? Boxes.stack(Words.display(model.promise()))
                : Boxes.loose(
                        Boxes.tight(Words.of(Styles.FOLIO, model.think()), belief),
                        Boxes.tight(Words.of(Styles.FOLIO, model.truth()), truth));
        VBox page = Boxes.loose(
                Boxes.stack(mark, Words.heading(model.showroom())),
                Boxes.filler(), turn, Boxes.filler(), steps, start);
        page.getStyleClass().add("attract");
        page.setAlignment(Pos.CENTER_LEFT);
        node = new Touch(model.start(), page, touched).styled("attract-touch");
        show(0);
        if (model.turns().size() > 1) {
            loop.setCycleCount(Animation.INDEFINITE);
            loop.play();
        }
    }

    /** The page before there is anything to go to; who touches it is asked to wait. */
    static AttractView greeting(AttractModel model, Runnable touched) {
        AttractView[] view = new AttractView[1];
        view[0] = new AttractView(model, () -> {
            view[0].start.setText(model.moment());
            touched.run();
        });
        return view[0];
    }

    Node node() {
        return node;
    }

    void stop() {
        loop.stop();
    }

    private void next() {
        show((shown + 1) % model.turns().size());
    }

    private void show(int turn) {
        shown = turn;
        if (!model.turns().isEmpty()) {
            belief.setText(model.turns().get(turn).belief());
            truth.setText(model.turns().get(turn).truth());
        }
        steps.getChildren().clear();
        for (int i = 0; i < model.turns().size(); i++) {
            Region step = new Region();
            step.getStyleClass().addAll("attract-step", i == turn ? "now" : "later");
            steps.getChildren().add(step);
        }
    }
}
