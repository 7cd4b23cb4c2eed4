package fencerow.kiosk;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.TextSize;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One way a screen can be shown.
 *
 * @param portrait whether the panel is mounted upright
 * @param lowReach whether everything is in its lower part
 */
record Cell(Panel panel, boolean portrait, TextSize textSize, boolean highContrast, String language,
        boolean lowReach) {
    /** Set to anything, every screen is walked in every way. */
    private static final String FULL = "fencerow.walk.full";

    /** The ways in which a screen is walked: any two settings meet in one of them. Other names, other ways. */
    static List<Cell> of(String screen) {
        if (System.getProperty(FULL) != null) {
            return all();
        }
        List<Panel> panels = List.of(Panel.values());
        List<TextSize> textSizes = List.of(TextSize.values());
        List<String> languages = languages();
        return Pairs.of(List.of(panels.size(), 2, textSizes.size(), 2, languages.size(), 2),
                        screen.hashCode()).stream()
                .map(at -> new Cell(panels.get(at.get(0)), at.get(1) == 1, textSizes.get(at.get(2)), at.get(3) == 1,
                        languages.get(at.get(4)), at.get(5) == 1))
                .toList();
    }

    static List<Cell> all() {
        List<Cell> cells = new ArrayList<>();
        for (Panel panel : Panel.values()) {
            for (boolean portrait : new boolean[] {false, true}) {
                for (TextSize textSize : TextSize.values()) {
                    for (boolean highContrast : new boolean[] {false, true}) {
                        for (String language : languages()) {
                            cells.add(new Cell(panel, portrait, textSize, highContrast, language, false));
                            cells.add(new Cell(panel, portrait, textSize, highContrast, language, true));
                        }
                    }
                }
            }
        }
        return cells;
    }

    /** Those offered, and the one with longer words. */
    private static List<String> languages() {
        List<String> offered = Rooms.premises().settings().languages();
        return Stream.concat(offered.stream(), Stream.of(Rooms.PSEUDO)).distinct().toList();
    }

    int width() {
        return panel.width(portrait);
    }

    int height() {
        return panel.height(portrait);
    }

    Scale scale() {
        return Scale.of(panel.diagonalMetres(), width(), height(), textSize);
    }

    /** Looks at the screen in a scene of its own, laid out. Called on JavaFX's thread. */
    <T> T show(Premises premises, WalkPlace place, Function<Shown, T> look) {
        Shown shown = Shown.of(Rooms.on(panel.diagonalMetres(), premises), width(), height());
        shown.frame().change(new Comfort(language, textSize, highContrast, false, lowReach));
        place.prepare().accept(shown.frame());
        shown.layOut();
        place.then().accept(shown);
        shown.layOut();
        try {
            return look.apply(shown);
        } finally {
            shown.frame().leave();
        }
    }

    @Override
    public String toString() {
        return panel + (portrait ? "-portrait-" : "-landscape-") + textSize.id()
                + (highContrast ? "-contrast" : "") + "-" + language + (lowReach ? "-low" : "");
    }
}
