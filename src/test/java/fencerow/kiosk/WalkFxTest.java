package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.kit.TextSize;
import fencerow.kiosk.kit.Touch;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javafx.geometry.Bounds;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Opens every screen in the ways it can be shown, and holds it to the rules of {@link LayoutRules}; any two settings
 * meet in one of the ways. {@code -Dfencerow.walk.full} walks every way. {@link PixelRules} hold in one way a screen,
 * which alternates between the two contrasts.
 */
class WalkFxTest {
    /**
     * WCAG 2.2, 1.4.12: lines one and a half times as far apart lose nothing. JavaFX cannot set letters and words
     * further apart; the language with longer words stands in for those.
     */
    private static final String FURTHER_APART = "data:text/css;base64," + Base64.getEncoder().encodeToString(
            ".label, .text, .text-flow { -fx-line-spacing: 0.35em; }".getBytes(StandardCharsets.UTF_8));

    static List<WalkPlace> places() {
        return WalkPlace.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("places")
    void everyScreenKeepsTheRulesInEveryWayItCanBeShown(WalkPlace place) {
        Premises premises = Rooms.premises();
        List<String> broken = new ArrayList<>();
        Optional<Cell> further = Cell.of(place.name()).stream()
                .filter(each -> each.textSize() == TextSize.NORMAL)
                .findFirst();
        for (Cell cell : Cell.of(place.name())) {
            Fx.on(() -> cell.show(premises, place, shown -> {
                String where = place.name() + "-" + cell + ": ";
                new LayoutRules(shown.scene(), cell).broken().forEach(each -> broken.add(where + each));
                if (further.equals(Optional.of(cell))) {
                    shown.scene().getStylesheets().add(FURTHER_APART);
                    shown.layOut();
                    new LayoutRules(shown.scene(), cell).broken()
                            .forEach(each -> broken.add(where + "lines further apart: " + each));
                }
                return true;
            }));
        }
        assertEquals("", String.join("\n", broken));
    }

    @Test
    void contrastIsWhatTheStandardsOwnFormulaGives() {
        // Values of WCAG 2.2's formula, worked out apart from this code.
        assertEquals(21.00, PixelRules.contrast(Color.BLACK, Color.WHITE), 0.005);
        assertEquals(4.542, PixelRules.contrast(Color.web("#767676"), Color.WHITE), 0.001);
        assertEquals(2.995, PixelRules.contrast(Color.WHITE, Color.web("#959595")), 0.001);
        assertEquals(8.592, PixelRules.contrast(Color.web("#0000ff"), Color.WHITE), 0.001);
    }

    @Test
    void everyScreenStandsOutAndHasHelpAndStartOverInTheSamePlace() {
        List<String> broken = new ArrayList<>();
        Map<String, Bounds> first = new TreeMap<>();
        int number = 0;
        for (WalkPlace place : WalkPlace.all()) {
            Cell cell = new Cell(Panel.INCHES_21_5, false, TextSize.NORMAL, number++ % 2 == 1, "en", false);
            Fx.on(() -> cell.show(Rooms.premises(), place, shown -> {
                PixelRules.broken(shown).forEach(each -> broken.add(place.name() + "-" + cell + ": " + each));
                if (shown.frame().here().key().equals("attract")) {
                    return true;
                }
                for (String key : List.of("strip.help", "strip.start-over")) {
                    Bounds box = find(shown, shown.frame().say(key));
                    Bounds usual = first.computeIfAbsent(key, fresh -> box);
                    if (Math.hypot(box.getMinX() - usual.getMinX(), box.getMinY() - usual.getMinY()) > 1) {
                        broken.add(place.name() + ": " + key + " is at " + box + ", elsewhere at " + usual);
                    }
                }
                return true;
            }));
        }
        assertEquals("", String.join("\n", broken));
    }

    private static Bounds find(Shown shown, String name) {
        List<Touch> found = shown.touches().stream().filter(each -> name.equals(each.getAccessibleText())).toList();
        assertTrue(!found.isEmpty(), () -> "there is no [" + name + "] at " + shown.frame().here().key());
        return found.get(0).localToScene(found.get(0).getLayoutBounds());
    }
}
