package fencerow.content;

import fencerow.explainers.Outline;
import fencerow.explainers.Outline.Step;
import java.util.ArrayList;
import java.util.List;

/** Draws an outline step by step, by whatever SVG has: quadratic curves and arcs come out as cubic curves. */
final class Pen {
    /** The longest piece of an arc that one cubic curve stands for; it is off by less than 0.03 % of the radius. */
    private static final double QUARTER = Math.PI / 2;

    private final List<Step> steps = new ArrayList<>();
    private double x;
    private double y;
    private double startX;
    private double startY;

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    Pen move(double toX, double toY) {
        steps.add(new Step.Move(toX, toY));
        startX = toX;
        startY = toY;
        return at(toX, toY);
    }

    Pen line(double toX, double toY) {
        steps.add(new Step.Line(toX, toY));
        return at(toX, toY);
    }

    Pen curve(double x1, double y1, double x2, double y2, double toX, double toY) {
        steps.add(new Step.Curve(x1, y1, x2, y2, toX, toY));
        return at(toX, toY);
    }

    /** A quadratic curve, raised to a cubic one that is the same. */
    Pen quadratic(double x1, double y1, double toX, double toY) {
        return curve(
                x + (x1 - x) * 2 / 3, y + (y1 - y) * 2 / 3,
                toX + (x1 - toX) * 2 / 3, toY + (y1 - toY) * 2 / 3,
                toX, toY);
    }

    Pen close() {
        steps.add(new Step.Close());
        return at(startX, startY);
    }

    private Pen at(double newX, double newY) {
        x = newX;
        y = newY;
        return this;
    }

    /**
     * An arc of an ellipse, by the steps of "Elliptical arc implementation notes" in the W3C's Scalable Vector Graphics
     * 1.1, appendix F.6: radii too small are raised, none makes a straight line.
     *
     * @param turn of the ellipse's first axis, in degrees
     */
    Pen arc(double radiusX, double radiusY, double turn, boolean large, boolean sweep, double toX, double toY) {
        double rx = Math.abs(radiusX);
        double ry = Math.abs(radiusY);
        if (toX == x && toY == y) {
            return this;
        }
        if (rx == 0 || ry == 0) {
            return line(toX, toY);
        }
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        double halfX = (x - toX) / 2;
        double halfY = (y - toY) / 2;
        double px = cos * halfX + sin * halfY;
        double py = -sin * halfX + cos * halfY;
        double tooSmall = Math.sqrt(px * px / (rx * rx) + py * py / (ry * ry));
        if (tooSmall > 1) {
            rx *= tooSmall;
            ry *= tooSmall;
        }
        double below = rx * rx * py * py + ry * ry * px * px;
        double factor = Math.sqrt(Math.max(0, (rx * rx * ry * ry - below) / below)) * (large == sweep ? -1 : 1);
        double cxp = factor * rx * py / ry;
        double cyp = -factor * ry * px / rx;
        double from = Math.atan2((py - cyp) / ry, (px - cxp) / rx);
        double swept = Math.atan2((-py - cyp) / ry, (-px - cxp) / rx) - from;
        if (sweep && swept < 0) {
            swept += 2 * Math.PI;
        } else if (!sweep && swept > 0) {
            swept -= 2 * Math.PI;
        }
        double cx = cos * cxp - sin * cyp + (x + toX) / 2;
        double cy = sin * cxp + cos * cyp + (y + toY) / 2;
        int pieces = (int) Math.max(1, Math.ceil(Math.abs(swept) / QUARTER - 1e-6));
        double piece = swept / pieces;
        double handle = 4.0 / 3 * Math.tan(piece / 4);
        for (int i = 0; i < pieces; i++) {
            double a = from + i * piece;
            double b = a + piece;
            double[] p = {
                Math.cos(a) - handle * Math.sin(a), Math.sin(a) + handle * Math.cos(a),
                Math.cos(b) + handle * Math.sin(b), Math.sin(b) - handle * Math.cos(b),
                Math.cos(b), Math.sin(b)
            };
            double[] q = new double[p.length];
            for (int j = 0; j < p.length; j += 2) {
                q[j] = cx + cos * rx * p[j] - sin * ry * p[j + 1];
                q[j + 1] = cy + sin * rx * p[j] + cos * ry * p[j + 1];
            }
            boolean last = i == pieces - 1;
            curve(q[0], q[1], q[2], q[3], last ? toX : q[4], last ? toY : q[5]);
        }
        return this;
    }

    /** An ellipse, all round. */
    Pen ellipse(double cx, double cy, double rx, double ry) {
        return move(cx + rx, cy)
                .arc(rx, ry, 0, false, true, cx - rx, cy)
                .arc(rx, ry, 0, false, true, cx + rx, cy)
                .close();
    }

    /** A box with rounded corners. */
    Pen box(double left, double top, double width, double height, double rx, double ry) {
        double right = left + width;
        double bottom = top + height;
        return move(left + rx, top)
                .line(right - rx, top)
                .arc(rx, ry, 0, false, true, right, top + ry)
                .line(right, bottom - ry)
                .arc(rx, ry, 0, false, true, right - rx, bottom)
                .line(left + rx, bottom)
                .arc(rx, ry, 0, false, true, left, bottom - ry)
                .line(left, top + ry)
                .arc(rx, ry, 0, false, true, left + rx, top)
                .close();
    }

    /** What was drawn. @throws IllegalArgumentException if that is nothing */
    Outline outline() {
        return new Outline(steps);
    }
}
