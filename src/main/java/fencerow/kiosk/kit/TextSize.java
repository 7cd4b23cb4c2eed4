package fencerow.kiosk.kit;

/** How large the words are. */
public enum TextSize {
    /** Capitals of 4.8 mm, the least that the accessibility standards ask of a kiosk. */
    NORMAL("normal", 1),
    /** Capitals of 7.4 mm: 0.7 degrees at 600 mm, the low-vision mode of EN 301 549 (5.1.4). */
    LARGE("large", 1.53),
    /** Twice the normal size: WCAG 2.2, 1.4.4. */
    DOUBLE("double", 2);

    private final String id;
    private final double factor;

    TextSize(String id, double factor) {
        this.id = id;
        this.factor = factor;
    }

    /** The word used in text keys and style classes. */
    public String id() {
        return id;
    }

    /** How many times the normal size. */
    public double factor() {
        return factor;
    }

    /** The next larger; after the largest the normal one. */
    public TextSize next() {
        return switch (this) {
            case NORMAL -> LARGE;
            case LARGE -> DOUBLE;
            case DOUBLE -> NORMAL;
        };
    }
}
