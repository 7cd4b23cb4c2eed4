package fencerow;

import fencerow.backoffice.Folders;
import fencerow.kiosk.Kiosk;
import fencerow.kiosk.frame.Greeting;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Openings;
import fencerow.kiosk.frame.Speaker;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * Starts a bare window or the kiosk in a process of its own, prints how many milliseconds after the process began its
 * third frame was drawn with something to touch, and ends.
 */
public final class StartProbe {
    private static final int FRAMES = 3;

    private StartProbe() {}

    /** {@code bare}; or {@code prepare}, {@code first} or {@code all}, and a data folder. */
    public static void main(String[] args) {
        if (args[0].equals("bare")) {
            Platform.startup(() -> {
                Stage stage = new Stage();
                stage.setScene(new Scene(new StackPane(new Label("bare")), 1920, 1080));
                stage.show();
                whenDrawn(() -> true);
            });
            return;
        }
        Openings files = new KioskFiles(
                new KioskWiring(Clock.system(ZoneOffset.UTC), "", config -> Path.of(args[1])),
                Folders.below(Path.of("")));
        Kiosk.run(new Probed(files, args[0]), Speaker.NONE, Clock.system(ZoneOffset.UTC), "1920x1080");
    }

    /** What the kiosk opens with; tells when it can be touched first, when all of it is there, or only prepares. */
    private record Probed(Openings files, String what) implements Openings {
        @Override
        public Optional<Greeting> findGreeting() {
            if (what.equals("first")) {
                whenDrawn(StartProbe::canBeTouched);
            }
            return files.findGreeting();
        }

        @Override
        public void keep(Greeting greeting) {
            files.keep(greeting);
            if (what.equals("prepare")) {
                Runtime.getRuntime().halt(0);
            }
        }

        @Override
        public Opening open() {
            Opening opening = files.open();
            if (what.equals("all")) {
                Platform.runLater(() -> Platform.runLater(() -> whenDrawn(StartProbe::canBeTouched)));
            }
            return opening;
        }

        @Override
        public Optional<Opening> findNewer() {
            return Optional.empty();
        }
    }

    private static boolean canBeTouched() {
        return Window.getWindows().stream().anyMatch(window -> window.getScene().getRoot().lookup(".touch") != null);
    }

    private static void whenDrawn(BooleanSupplier ready) {
        new AnimationTimer() {
            private int frames;

            @Override
            public void handle(long now) {
                frames += ready.getAsBoolean() ? 1 : 0;
                if (frames == FRAMES) {
                    System.out.println("started "
                            + (System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime()));
                    Runtime.getRuntime().halt(0);
                }
            }
        }.start();
    }
}
