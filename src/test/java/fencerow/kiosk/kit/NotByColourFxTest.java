package fencerow.kiosk.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import fencerow.explainers.Look;
import fencerow.explainers.Look.Ink;
import fencerow.explainers.Look.Tone;
import fencerow.explainers.Outline;
import fencerow.explainers.Outline.Step;
import fencerow.explainers.Piece;
import fencerow.kiosk.Fx;
import fencerow.match.Verdict;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.shape.Shape;
import org.junit.jupiter.api.Test;

/** Who sees no colours is told the same: colour is never the only sign (EN 301 549, 9.1.4.1; WCAG 2.2, 1.4.1). */
class NotByColourFxTest {
    private static final Drawing DRAWING = new Drawing(new Bounds(0, 0, 100, 100), "A test", "", List.of(
            new Piece.Part("loader", List.of(new Piece.Shape(
                    new Outline(List.of(new Step.Move(10, 10), new Step.Line(90, 90), new Step.Close())),
                    new Look(Ink.LINE, Tone.LIGHT, 2, false))))));

    @Test
    void whatIsThereExtraMissingOrNotVerifiedIsDrawnInLinesOfItsOwnKind() {
        Map<PartMark, List<Double>> dashes = new EnumMap<>(PartMark.class);
        for (PartMark mark : EnumSet.complementOf(EnumSet.of(PartMark.LIT))) {
            dashes.put(mark, Fx.on(() -> {
                DrawingPane pane = new DrawingPane(DRAWING, "A loader.");
                Scene scene = new Scene(pane, 100, 100);
                scene.setUserAgentStylesheet(
                        Theme.stylesheet(Scale.of(0.546, 1920, 1080, TextSize.NORMAL), false));
                pane.mark(Map.of("loader", mark));
                pane.applyCss();
                pane.layout();
                Shape line = (Shape) pane.lookup(".ink-line");
                return List.copyOf(line.getStrokeDashArray());
            }));
        }
        assertEquals(dashes.size(), new HashSet<>(dashes.values()).size(), dashes::toString);
    }

    @Test
    void everyVerdictHasASignOfItsOwnAndItsWords() {
        Set<Icon> signs = Arrays.stream(Verdict.values()).map(VerdictBadge::icon).collect(Collectors.toSet());
        assertEquals(Verdict.values().length, signs.size());
        for (Verdict verdict : Verdict.values()) {
            assertTrue(Fx.on(() -> new VerdictBadge(verdict, "words").getChildren().stream()
                    .anyMatch(node -> node instanceof Label label && label.getText().equals("words"))));
        }
    }
}
