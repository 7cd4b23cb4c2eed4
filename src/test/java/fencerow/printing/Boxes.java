package fencerow.printing;

import java.awt.image.BufferedImage;

/** Finds drawn squares in a picture of a page. */
final class Boxes {
    private static final int DARK = 96;
    private static final double SMALLEST_MM = 4;
    private static final double LARGEST_MM = 9;

    private Boxes() {}

    /**
     * The outer side of the smallest empty square with a dark frame, in millimetres.
     *
     * @throws AssertionError if there are fewer than five, too few for a list to tick
     */
    static double smallestSquare(BufferedImage picture, int dpi) {
        double smallest = Double.MAX_VALUE;
        int found = 0;
        for (int y = 1; y < picture.getHeight(); y++) {
            for (int x = 1; x < picture.getWidth(); x++) {
                if (isDark(picture, x, y) && !isDark(picture, x - 1, y) && !isDark(picture, x, y - 1)) {
                    int width = run(picture, x, y, 1, 0);
                    int height = run(picture, x, y, 0, 1);
                    double mm = Math.min(width, height) * 25.4 / dpi;
                    if (mm >= SMALLEST_MM && mm <= LARGEST_MM && Math.abs(width - height) <= 3
                            && isFrame(picture, x, y, width, height)) {
                        found++;
                        smallest = Math.min(smallest, mm);
                    }
                }
            }
        }
        if (found < 5) {
            throw new AssertionError("only " + found + " tick boxes on the page");
        }
        return smallest;
    }

    private static boolean isDark(BufferedImage picture, int x, int y) {
        return x < picture.getWidth() && y < picture.getHeight() && (picture.getRGB(x, y) & 0xff) < DARK;
    }

    private static int run(BufferedImage picture, int x, int y, int dx, int dy) {
        int length = 0;
        while (isDark(picture, x + dx * length, y + dy * length)) {
            length++;
        }
        return length;
    }

    private static boolean isFrame(BufferedImage picture, int x, int y, int width, int height) {
        boolean empty = !isDark(picture, x + width / 2, y + height / 2);
        return empty
                && run(picture, x, y + height - 2, 1, 0) >= width - 3
                && run(picture, x + width - 2, y, 0, 1) >= height - 3;
    }
}
