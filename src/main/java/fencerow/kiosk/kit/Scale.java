package fencerow.kiosk.kit;

/**
 * How millimetres on the panel become pixels.
 *
 * @param pixelsPerMillimetre of the panel
 * @param textSize            how large the words are
 */
public record Scale(double pixelsPerMillimetre, TextSize textSize) {
    /**
     * The smallest words, as the height of Roboto's em in millimetres: its capitals are 0.711 of that, so 4.8 mm, the
     * least for a kiosk without enlargement (ADA Standards 707.7.2, Section 508 402.4).
     */
    public static final double SMALLEST_TEXT = 6.8;

    /** The height of Roboto's capitals as a share of its em (from the font's own table: 1456 of 2048). */
    public static final double CAPITALS = 1456.0 / 2048;

    /** @throws IllegalArgumentException if there are no pixels in a millimetre */
    public Scale {
        if (!(pixelsPerMillimetre > 0)) {
            throw new IllegalArgumentException(
                    "[" + pixelsPerMillimetre + "] pixels in a millimetre; give a panel that has a size");
        }
    }

    /**
     * The scale of a panel.
     *
     * @param diagonalMetres of the visible area
     * @param width          in pixels
     * @param height         in pixels
     */
    public static Scale of(double diagonalMetres, double width, double height, TextSize textSize) {
        return new Scale(Math.hypot(width, height) / (diagonalMetres * 1000), textSize);
    }

    /** Pixels in so many millimetres. */
    public double px(double millimetres) {
        return millimetres * pixelsPerMillimetre;
    }

    /** At least so many millimetres in whole pixels, so that edges fall on pixels and stay sharp. */
    public double whole(double millimetres) {
        return Math.ceil(px(millimetres));
    }

    /** The size of the smallest words in pixels, text size included: one em of the theme. */
    public double em() {
        return px(SMALLEST_TEXT) * textSize.factor();
    }
}
