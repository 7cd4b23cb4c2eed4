package fencerow.explainers;

import java.util.ArrayList;
import java.util.List;

/**
 * A line, open or closed, in one or more strokes of the pen. All that a reader may find (arcs, boxes, circles) is
 * brought to these four steps.
 *
 * @param steps in drawing order; the first is a {@link Step.Move}
 */
public record Outline(List<Step> steps) {
    /** Straight pieces that stand for one curve when points are looked for. */
    private static final int PIECES = 12;

    /** Copies the steps. @throws IllegalArgumentException if they do not start with a move */
    public Outline {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || !(steps.get(0) instanceof Step.Move)) {
            throw new IllegalArgumentException("an outline of " + steps.size() + " steps starts nowhere; move first");
        }
    }

    /** One step of the pen; where it stands before is where the last step ended. */
    public sealed interface Step {
        /** Lifts the pen and puts it down there. */
        record Move(double x, double y) implements Step {}

        /** A straight line. */
        record Line(double x, double y) implements Step {}

        /** A cubic Bezier curve with two control points. */
        record Curve(double x1, double y1, double x2, double y2, double x, double y) implements Step {}

        /** A straight line back to where the pen was last put down. */
        record Close() implements Step {}
    }

    /** The same, moved, turned or sized. */
    public Outline mapped(Affine by) {
        List<Step> mapped = new ArrayList<>();
        for (Step step : steps) {
            if (step instanceof Step.Move move) {
                mapped.add(new Step.Move(by.x(move.x, move.y), by.y(move.x, move.y)));
            } else if (step instanceof Step.Line line) {
                mapped.add(new Step.Line(by.x(line.x, line.y), by.y(line.x, line.y)));
            } else if (step instanceof Step.Curve curve) {
                mapped.add(new Step.Curve(
                        by.x(curve.x1, curve.y1), by.y(curve.x1, curve.y1),
                        by.x(curve.x2, curve.y2), by.y(curve.x2, curve.y2),
                        by.x(curve.x, curve.y), by.y(curve.x, curve.y)));
            } else {
                mapped.add(step);
            }
        }
        return new Outline(mapped);
    }

    /** The smallest rectangle around the line itself, without its width. */
    public Bounds bounds() {
        List<List<double[]>> lines = polylines();
        Bounds bounds = new Bounds(lines.get(0).get(0)[0], lines.get(0).get(0)[1], 0, 0);
        for (List<double[]> line : lines) {
            for (double[] point : line) {
                bounds = bounds.and(new Bounds(point[0], point[1], 0, 0));
            }
        }
        return bounds;
    }

    /** Whether the point lies inside, all strokes taken as closed, by the nonzero rule. */
    public boolean contains(double x, double y) {
        int winding = 0;
        for (List<double[]> line : polylines()) {
            for (int i = 0; i < line.size(); i++) {
                double[] from = line.get(i);
                double[] to = line.get((i + 1) % line.size());
                double side = (to[0] - from[0]) * (y - from[1]) - (x - from[0]) * (to[1] - from[1]);
                if (from[1] <= y && to[1] > y && side > 0) {
                    winding++;
                } else if (from[1] > y && to[1] <= y && side < 0) {
                    winding--;
                }
            }
        }
        return winding != 0;
    }

    /** How far the point is from the line itself. */
    public double distance(double x, double y) {
        double least = Double.MAX_VALUE;
        for (List<double[]> line : polylines()) {
            least = Math.min(least, Math.hypot(x - line.get(0)[0], y - line.get(0)[1]));
            for (int i = 1; i < line.size(); i++) {
                least = Math.min(least, distance(line.get(i - 1), line.get(i), x, y));
            }
        }
        return least;
    }

    /** How long the line is, all strokes taken as closed. */
    double length() {
        double length = 0;
        for (List<double[]> line : polylines()) {
            for (int i = 0; i < line.size(); i++) {
                double[] to = line.get((i + 1) % line.size());
                length += Math.hypot(to[0] - line.get(i)[0], to[1] - line.get(i)[1]);
            }
        }
        return length;
    }

    /** How much the strokes enclose, each on its own and taken as closed. */
    double area() {
        double area = 0;
        for (List<double[]> line : polylines()) {
            double twice = 0;
            for (int i = 0; i < line.size(); i++) {
                double[] to = line.get((i + 1) % line.size());
                twice += line.get(i)[0] * to[1] - to[0] * line.get(i)[1];
            }
            area += Math.abs(twice) / 2;
        }
        return area;
    }

    private static double distance(double[] from, double[] to, double x, double y) {
        double dx = to[0] - from[0];
        double dy = to[1] - from[1];
        double length = dx * dx + dy * dy;
        double along = length == 0 ? 0 : ((x - from[0]) * dx + (y - from[1]) * dy) / length;
        double on = Math.max(0, Math.min(1, along));
        return Math.hypot(x - from[0] - on * dx, y - from[1] - on * dy);
    }

    /** Each stroke as points joined by straight lines; curves also pass through where they turn back. */
    private List<List<double[]>> polylines() {
        List<List<double[]>> all = new ArrayList<>();
        List<double[]> line = new ArrayList<>();
        for (Step step : steps) {
            if (step instanceof Step.Move move) {
                line = new ArrayList<>(List.of(new double[] {move.x, move.y}));
                all.add(line);
            } else if (step instanceof Step.Line to) {
                line.add(new double[] {to.x, to.y});
            } else if (step instanceof Step.Curve curve) {
                addCurve(line, curve);
            } else {
                double[] start = line.get(0);
                line.add(start);
                // What follows without a move starts where the closed stroke did.
                line = new ArrayList<>(List.of(start));
                all.add(line);
            }
        }
        return all;
    }

    private static void addCurve(List<double[]> line, Step.Curve curve) {
        double[] from = line.get(line.size() - 1);
        double[] xs = {from[0], curve.x1, curve.x2, curve.x};
        double[] ys = {from[1], curve.y1, curve.y2, curve.y};
        List<Double> at = new ArrayList<>();
        for (int i = 1; i <= PIECES; i++) {
            at.add((double) i / PIECES);
        }
        addTurns(at, xs);
        addTurns(at, ys);
        at.stream().sorted().forEach(t -> line.add(new double[] {bezier(xs, t), bezier(ys, t)}));
    }

    private static double bezier(double[] p, double t) {
        double s = 1 - t;
        return s * s * s * p[0] + 3 * s * s * t * p[1] + 3 * s * t * t * p[2] + t * t * t * p[3];
    }

    /** Where the derivative of the curve is zero. */
    private static void addTurns(List<Double> at, double[] p) {
        double a = -p[0] + 3 * p[1] - 3 * p[2] + p[3];
        double b = 2 * (p[0] - 2 * p[1] + p[2]);
        double c = p[1] - p[0];
        double root = b * b - 4 * a * c;
        double[] turns = Math.abs(a) < 1e-9
                ? new double[] {-c / b}
                : new double[] {(-b + Math.sqrt(root)) / (2 * a), (-b - Math.sqrt(root)) / (2 * a)};
        for (double t : turns) {
            if (t > 0 && t < 1) {
                at.add(t);
            }
        }
    }
}
