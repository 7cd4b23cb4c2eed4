package fencerow.kiosk;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.kit.TextSize;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.Scene;

/**
 * One way a screen can be shown.
 *
 * @param width  of the scene, in pixels
 * @param height of the scene, in pixels
 */
record Cell(int width, int height, TextSize textSize, boolean highContrast, String language) {
    /** In high contrast only English is looked at: it changes colours and lines, whatever the words are. */
    static List<Cell> all() {
        List<Cell> cells = new ArrayList<>();
        for (int[] size : new int[][] {{1920, 1080}, {1080, 1920}}) {
            for (TextSize textSize : TextSize.values()) {
                for (boolean highContrast : new boolean[] {false, true}) {
                    for (String language : highContrast ? List.of("en") : List.of("en", "es", Rooms.PSEUDO)) {
                        cells.add(new Cell(size[0], size[1], textSize, highContrast, language));
                    }
                }
            }
        }
        return cells;
    }

    /** Looks at the screen in a scene of its own, laid out. Called on JavaFX's thread. */
    <T> T show(Premises premises, WalkPlace place, Function<Scene, T> look) {
        Shown shown = Shown.of(premises, width, height);
        shown.frame().go(new Place.Home());
        shown.frame().change(new Comfort(language, textSize, highContrast, false));
        place.prepare().accept(shown.frame());
        shown.layOut();
        place.then().accept(shown);
        shown.layOut();
        try {
            return look.apply(shown.scene());
        } finally {
            shown.frame().leave();
        }
    }

    @Override
    public String toString() {
        return (width > height ? "landscape" : "portrait") + "-" + textSize.id()
                + (highContrast ? "-contrast" : "") + "-" + language;
    }
}
