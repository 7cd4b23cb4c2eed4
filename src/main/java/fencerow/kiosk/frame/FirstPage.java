package fencerow.kiosk.frame;

import fencerow.kiosk.kit.TextSize;
import java.util.concurrent.Executor;
import javafx.animation.AnimationTimer;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** What is to be seen before there is anything to go to. Confined to the screen's thread. */
final class FirstPage {
    private static final int PULSES_TO_DRAW = 2;
    private static final Comfort USUAL = new Comfort("", TextSize.NORMAL, false, false);

    private final Openings openings;
    private final Greeter greeter;
    private boolean touched;

    FirstPage(Openings openings, Greeter greeter) {
        this.openings = openings;
        this.greeter = greeter;
    }

    /**
     * Shows it, where a start before this one has left any.
     *
     * @param then called once it is drawn: reading all the rest keeps both hands of a small machine busy
     */
    void show(Scene scene, Runnable then) {
        openings.findGreeting().ifPresentOrElse(greeting -> {
            Parent page = greeter.page(greeting, () -> touched = true);
            scene.setRoot(page);
            LockDown.on(page);
            Look.give(scene, greeting.diagonalMetres(), USUAL);
            afterDrawing(then);
        }, then);
    }

    private static void afterDrawing(Runnable then) {
        new AnimationTimer() {
            private int pulses;

            @Override
            public void handle(long now) {
                pulses++;
                if (pulses == PULSES_TO_DRAW) {
                    stop();
                    then.run();
                }
            }
        }.start();
    }

    /** There is something to go to: who touched the first page gets there, and the next start greets with this. */
    void over(Frame frame, Executor workers) {
        if (touched) {
            touched = false;
            frame.go(new Place.Home());
        }
        Premises premises = frame.premises();
        workers.execute(() -> openings.keep(greeter.greeting(premises)));
    }
}
