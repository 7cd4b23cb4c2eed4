package fencerow.explainers;

/**
 * Moves, turns and sizes points: x' = a x + c y + e, y' = b x + d y + f, in the letters of SVG's {@code matrix}.
 *
 * @param a share of x in x'
 * @param b share of x in y'
 * @param c share of y in x'
 * @param d share of y in y'
 * @param e added to x'
 * @param f added to y'
 */
public record Affine(double a, double b, double c, double d, double e, double f) {
    /** Leaves points where they are. */
    public static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

    /** Moves. */
    public static Affine translate(double x, double y) {
        return new Affine(1, 0, 0, 1, x, y);
    }

    /** Turns clockwise as seen on the drawing, by degrees, about a point. */
    public static Affine rotate(double degrees, double aboutX, double aboutY) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return translate(aboutX, aboutY)
                .after(new Affine(cos, sin, -sin, cos, 0, 0))
                .after(translate(-aboutX, -aboutY));
    }

    /** Sizes; a negative number mirrors. */
    public static Affine scale(double x, double y) {
        return new Affine(x, 0, 0, y, 0, 0);
    }

    /** Does the other first, then this. */
    public Affine after(Affine first) {
        return new Affine(
                a * first.a + c * first.b,
                b * first.a + d * first.b,
                a * first.c + c * first.d,
                b * first.c + d * first.d,
                x(first.e, first.f),
                y(first.e, first.f));
    }

    /** Where the point's x comes to lie. */
    public double x(double x, double y) {
        return a * x + c * y + e;
    }

    /** Where the point's y comes to lie. */
    public double y(double x, double y) {
        return b * x + d * y + f;
    }

    /** How many times longer lines get; the mean where that depends on their direction. */
    public double size() {
        return Math.sqrt(Math.abs(a * d - b * c));
    }
}
