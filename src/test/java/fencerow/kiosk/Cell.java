package fencerow.kiosk;

import fencerow.kiosk.frame.BackRoom;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Doors;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.kit.TextSize;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Scene;

/**
 * One way a screen can be shown.
 *
 * @param width  of the scene, in pixels
 * @param height of the scene, in pixels
 */
record Cell(int width, int height, TextSize textSize, boolean highContrast, String language) {
    static List<Cell> all() {
        List<Cell> cells = new ArrayList<>();
        for (int[] size : new int[][] {{1920, 1080}, {1080, 1920}}) {
            for (TextSize textSize : TextSize.values()) {
                for (boolean highContrast : new boolean[] {false, true}) {
                    for (String language : List.of("en", Rooms.PSEUDO)) {
                        cells.add(new Cell(size[0], size[1], textSize, highContrast, language));
                    }
                }
            }
        }
        return cells;
    }

    /** The screen in a scene of its own, laid out. Called on JavaFX's thread. */
    Scene show(Premises premises, WalkPlace place) {
        Scene scene = new Scene(new Group(), width, height);
        Frame frame = new Frame(premises, Screens::make, BackRoom.inPlace(),
                Clock.fixed(Instant.EPOCH, ZoneOffset.UTC), new Doors(() -> {}, () -> {}));
        frame.show(scene);
        frame.go(new Place.Home());
        frame.change(new Comfort(language, textSize, highContrast, false));
        place.prepare().accept(frame);
        // Twice: what one layout shows may change what the next one measures.
        for (int i = 0; i < 2; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
        return scene;
    }

    @Override
    public String toString() {
        return (width > height ? "landscape" : "portrait") + "-" + textSize.id()
                + (highContrast ? "-contrast" : "") + "-" + language;
    }
}
