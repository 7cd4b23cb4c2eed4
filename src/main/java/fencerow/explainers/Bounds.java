package fencerow.explainers;

/**
 * An upright rectangle in a drawing's own units; {@code y} grows downward.
 *
 * @param x      of its left edge
 * @param y      of its upper edge
 * @param width  zero or more
 * @param height zero or more
 */
public record Bounds(double x, double y, double width, double height) {
    /** @throws IllegalArgumentException if a side is negative or a number is not finite */
    public Bounds {
        if (!(width >= 0) || !(height >= 0) || !Double.isFinite(x + y + width + height)) {
            throw new IllegalArgumentException("[" + x + " " + y + " " + width + " " + height
                    + "] is no rectangle; give finite numbers, width and height not negative");
        }
    }

    /** The smallest rectangle with both corners in it. */
    public static Bounds between(double x1, double y1, double x2, double y2) {
        return new Bounds(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
    }

    /** Its right edge. */
    public double right() {
        return x + width;
    }

    /** Its lower edge. */
    public double bottom() {
        return y + height;
    }

    /** The smallest rectangle that holds both. */
    public Bounds and(Bounds other) {
        return between(
                Math.min(x, other.x), Math.min(y, other.y),
                Math.max(right(), other.right()), Math.max(bottom(), other.bottom()));
    }

    /** The same with so much more on each side. */
    public Bounds grown(double by) {
        return new Bounds(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    /** Whether the other lies wholly within. */
    public boolean holds(Bounds other) {
        return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
    }
}
