package fencerow.printing;

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
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

class DrawingPainterTest {
    private static final int WHITE = Color.WHITE.getRGB();

    private static Piece box(double left, double top, double right, double bottom, Ink ink, Tone tone) {
        return new Piece.Shape(new Outline(List.of(
                new Step.Move(left, top), new Step.Line(right, top), new Step.Line(right, bottom),
                new Step.Line(left, bottom), new Step.Close())), new Look(ink, tone, 2, false));
    }

    private static BufferedImage painted(Drawing drawing, int width, int height) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        new DrawingPainter().paint(drawing, graphics, 0, 0, width, height);
        graphics.dispose();
        return image;
    }

    /** The smallest rectangle around all that is not white. */
    private static Bounds seen(BufferedImage image) {
        int left = image.getWidth();
        int top = image.getHeight();
        int right = -1;
        int bottom = -1;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (image.getRGB(x, y) != WHITE) {
                    left = Math.min(left, x);
                    right = Math.max(right, x + 1);
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y + 1);
                }
            }
        }
        return Bounds.between(left, top, right, bottom);
    }

    private static Drawing drawing(Bounds frame, Piece... pieces) {
        return new Drawing(frame, "A test", "", List.of(pieces));
    }

    @Test
    void aDrawingFillsItsBoxInItsOwnProportionsAndStandsInTheMiddle() {
        Drawing wide = drawing(new Bounds(100, 50, 200, 100), box(100, 50, 300, 150, Ink.NONE, Tone.DARK));
        assertEquals(new Bounds(0, 25, 100, 50), seen(painted(wide, 100, 100)));
        assertEquals(new Bounds(50, 0, 200, 100), seen(painted(wide, 300, 100)));
    }

    @Test
    void whatLiesBeyondTheFrameIsNotPainted() {
        Drawing cut = drawing(new Bounds(0, 0, 100, 50), box(-50, -50, 50, 25, Ink.NONE, Tone.DARK));
        assertEquals(new Bounds(0, 25, 50, 25), seen(painted(cut, 100, 100)));
    }

    @Test
    void linesAreAsWideAsTheySay() {
        Drawing line = drawing(new Bounds(0, 0, 50, 50), box(10, 10, 40, 40, Ink.LINE, Tone.NONE));
        // Twice as large: lines of 2 units are 4 pixels wide, half of that beyond the outline at 20 and 80.
        assertEquals(new Bounds(18, 18, 64, 64), seen(painted(line, 100, 100)));
        assertEquals(WHITE, painted(line, 100, 100).getRGB(50, 50));
    }

    @Test
    void laterPiecesCoverEarlierOnes() {
        Drawing covered = drawing(new Bounds(0, 0, 100, 100),
                new Piece.Part("tire-type", List.of(box(0, 0, 100, 100, Ink.NONE, Tone.DARK))),
                box(0, 0, 50, 100, Ink.NONE, Tone.PAPER));
        assertEquals(new Bounds(50, 0, 50, 100), seen(painted(covered, 100, 100)));
    }

    @Test
    void everyInkAndToneHasAGreyAndTheSubjectIsDarkestAndTheGhostPalest() {
        for (Tone tone : Tone.values()) {
            int rgb = painted(drawing(new Bounds(0, 0, 9, 9), box(0, 0, 9, 9, Ink.NONE, tone)), 9, 9).getRGB(4, 4);
            assertGrey(rgb, tone.id());
        }
        for (Ink ink : Ink.values()) {
            assertGrey(inkOf(ink), ink.id());
        }
        assertTrue(level(inkOf(Ink.ACCENT)) < level(inkOf(Ink.LINE)));
        assertTrue(level(inkOf(Ink.LINE)) < level(inkOf(Ink.GHOST)));
        assertTrue(level(inkOf(Ink.GHOST)) < level(WHITE));
    }

    private static int inkOf(Ink ink) {
        Drawing thick = drawing(new Bounds(0, 0, 9, 9), new Piece.Shape(
                new Outline(List.of(new Step.Move(0, 4.5), new Step.Line(9, 4.5))),
                new Look(ink, Tone.NONE, 9, false)));
        return painted(thick, 9, 9).getRGB(4, 4);
    }

    private static void assertGrey(int rgb, String what) {
        Color color = new Color(rgb);
        assertEquals(color.getRed(), color.getGreen(), what);
        assertEquals(color.getRed(), color.getBlue(), what);
    }

    private static int level(int rgb) {
        return new Color(rgb).getRed();
    }

    @Test
    void wordsEndWhereTheirAnchorSays() {
        for (Piece.Anchor anchor : Piece.Anchor.values()) {
            Bounds seen = seen(painted(drawing(new Bounds(0, 0, 300, 100),
                    new Piece.Label("540", 150, 80, 40, anchor, Tone.DARK)), 300, 100));
            double at = switch (anchor) {
                case START -> seen.x();
                case MIDDLE -> seen.x() + seen.width() / 2;
                case END -> seen.right();
            };
            assertEquals(150, at, 4, anchor.id());
            assertEquals(80, seen.bottom(), 2, anchor.id());
        }
    }
}
