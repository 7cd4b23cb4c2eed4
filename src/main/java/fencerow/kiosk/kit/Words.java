package fencerow.kiosk.kit;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Lines and paragraphs of plain words; they wrap and are never cut off. */
public final class Words {
    private Words() {}

    /** Words of the style. */
    public static Label of(String style, String words) {
        Label label = new Line(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    /**
     * Measures for a width one pixel less than it gets: rounding could otherwise wrap a line more than was measured.
     */
    private static final class Line extends Label {
        private final Heights heights = new Heights();

        Line(String words) {
            super(words);
        }

        @Override
        public void requestLayout() {
            if (heights != null) { // while the label itself is made, there are none yet
                heights.forget();
            }
            super.requestLayout();
        }

        @Override
        protected double computePrefWidth(double height) {
            return super.computePrefWidth(height) + 1;
        }

        @Override
        protected double computePrefHeight(double width) {
            return heights.at(width, across -> super.computePrefHeight(across > 1 ? across - 1 : across));
        }
    }

    /** The largest words, one line on a screen. */
    public static Label display(String words) {
        return of(Styles.DISPLAY, words);
    }

    /** The name of a screen. */
    public static Label title(String words) {
        return of(Styles.TITLE, words);
    }

    /** The name of a section. */
    public static Label heading(String words) {
        return of(Styles.HEADING, words);
    }

    /** The name of a card. */
    public static Label subheading(String words) {
        return of(Styles.SUBHEADING, words);
    }

    /** The sentence that opens a page. */
    public static Label lead(String words) {
        return of(Styles.LEAD, words);
    }

    /** Running text. */
    public static Label body(String words) {
        return of(Styles.BODY, words);
    }

    /** Notes; still as large as the standards ask. */
    public static Label small(String words) {
        return of(Styles.SMALL, words);
    }

    /** How many words there are to read. */
    public static int count(String words) {
        String trimmed = words.strip();
        return trimmed.isEmpty() ? 0 : trimmed.split("\\s+").length;
    }
}
