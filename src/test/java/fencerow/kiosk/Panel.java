package fencerow.kiosk;

/** Touch panels that the screens are held to; pixels as mounted across. */
enum Panel {
    /** The smallest wide one. */
    INCHES_21_5(21.5, 1920, 1080),
    /** The largest, on which a pixel is largest too. */
    INCHES_27(27, 1920, 1080),
    /** The squarest. */
    INCHES_19(19, 1280, 1024);

    private static final double INCH = 0.0254;

    private final double inches;
    private final int longer;
    private final int shorter;

    Panel(double inches, int longer, int shorter) {
        this.inches = inches;
        this.longer = longer;
        this.shorter = shorter;
    }

    double diagonalMetres() {
        return inches * INCH;
    }

    int width(boolean portrait) {
        return portrait ? shorter : longer;
    }

    int height(boolean portrait) {
        return portrait ? longer : shorter;
    }

    @Override
    public String toString() {
        return String.valueOf(inches);
    }
}
