package fencerow.printing;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import fencerow.explainers.Look;
import fencerow.explainers.Outline;
import fencerow.explainers.Piece;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Paints drawings in greys that survive a copier: what the drawing is about is black and heavy, what only shows where
 * it belongs is pale. Letters are painted as outlines, so that nothing depends on the fonts of a machine.
 */
public final class DrawingPainter {
    private static final String LETTERS = "/com/formdev/flatlaf/fonts/roboto/Roboto-Bold.ttf";
    private static final float DASH = 2.6f;
    private static final float MITRE = 4;

    private final Font letters;

    /** @throws IllegalStateException if the typeface is missing or broken */
    public DrawingPainter() {
        try (InputStream file = DrawingPainter.class.getResourceAsStream(LETTERS)) {
            if (file == null) {
                throw new IllegalStateException("the typeface " + LETTERS + " is not on the class path");
            }
            letters = Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the typeface " + LETTERS + " is broken", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Paints a drawing into a box, as large as fits, in its middle. Nothing is painted outside the drawing's frame.
     *
     * @param graphics to paint on; is left as it was
     * @param x        of the box
     * @param y        of the box
     * @param width    of the box
     * @param height   of the box
     */
    public void paint(Drawing drawing, Graphics2D graphics, double x, double y, double width, double height) {
        Graphics2D inner = (Graphics2D) graphics.create();
        inner.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        inner.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Bounds frame = drawing.frame();
        double scale = Math.min(width / frame.width(), height / frame.height());
        inner.translate(x + (width - scale * frame.width()) / 2, y + (height - scale * frame.height()) / 2);
        inner.scale(scale, scale);
        inner.translate(-frame.x(), -frame.y());
        inner.clip(new Rectangle2D.Double(frame.x(), frame.y(), frame.width(), frame.height()));
        paint(drawing.pieces(), inner);
        inner.dispose();
    }

    private void paint(List<Piece> pieces, Graphics2D graphics) {
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Part part) {
                paint(part.pieces(), graphics);
            } else if (piece instanceof Piece.Shape shape) {
                paint(shape, graphics);
            } else if (piece instanceof Piece.Label label) {
                paint(label, graphics);
            }
        }
    }

    private static void paint(Piece.Shape shape, Graphics2D graphics) {
        Shape path = path(shape.outline());
        Look look = shape.look();
        if (look.tone() != Look.Tone.NONE) {
            graphics.setColor(grey(look.tone()));
            graphics.fill(path);
        }
        if (look.ink() != Look.Ink.NONE) {
            graphics.setColor(grey(look.ink()));
            graphics.setStroke(stroke(look));
            graphics.draw(path);
        }
    }

    private static BasicStroke stroke(Look look) {
        float width = (float) look.width();
        return look.dashed()
                ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, MITRE,
                        new float[] {DASH * width, DASH * width}, 0)
                : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private void paint(Piece.Label label, Graphics2D graphics) {
        Font font = letters.deriveFont((float) label.size());
        Shape outline = font.createGlyphVector(new FontRenderContext(null, true, true), label.words()).getOutline();
        double width = outline.getBounds2D().getWidth();
        double shift = switch (label.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        graphics.setColor(grey(label.tone()));
        graphics.fill(AffineTransform.getTranslateInstance(label.x() + shift, label.y())
                .createTransformedShape(outline));
    }

    /** The outline as Java2D has it. */
    static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (Outline.Step step : outline.steps()) {
            if (step instanceof Outline.Step.Move move) {
                path.moveTo(move.x(), move.y());
            } else if (step instanceof Outline.Step.Line line) {
                path.lineTo(line.x(), line.y());
            } else if (step instanceof Outline.Step.Curve curve) {
                path.curveTo(curve.x1(), curve.y1(), curve.x2(), curve.y2(), curve.x(), curve.y());
            } else {
                path.closePath();
            }
        }
        return path;
    }

    private static Color grey(Look.Ink ink) {
        return switch (ink) {
            case NONE, LINE, THIN -> new Color(0x3a, 0x3a, 0x3a);
            case ACCENT -> Color.BLACK;
            case GHOST -> new Color(0xa6, 0xa6, 0xa6);
        };
    }

    private static Color grey(Look.Tone tone) {
        return switch (tone) {
            case NONE, PAPER -> Color.WHITE;
            case LIGHT -> new Color(0xf0, 0xf0, 0xf0);
            case MID -> new Color(0xdc, 0xdc, 0xdc);
            case DARK -> new Color(0x6e, 0x6e, 0x6e);
            case LIT -> new Color(0xb8, 0xb8, 0xb8);
            case ACCENT -> Color.BLACK;
        };
    }
}
