package fencerow.explainers;

/**
 * How a shape is drawn, without any colour: a painter for the screen and one for paper each have their own.
 *
 * @param ink    of its line
 * @param tone   of its inside
 * @param width  of its line, in the drawing's units
 * @param dashed whether its line is broken: for what is not there, or hidden
 */
public record Look(Ink ink, Tone tone, double width, boolean dashed) {
    /** @throws IllegalArgumentException if the width is not a number above zero */
    public Look {
        if (!(width > 0) || !Double.isFinite(width)) {
            throw new IllegalArgumentException("a line [" + width + "] wide cannot be drawn; give a width above 0");
        }
    }

    /** What a line is drawn with. */
    public enum Ink {
        /** No line. */
        NONE("line-none", 1),
        /** The line most things are drawn with. */
        LINE("line", 2.5),
        /** Details. */
        THIN("thin", 1.4),
        /** What the drawing is about. */
        ACCENT("accent", 3.2),
        /** What is there only to show where the rest belongs. */
        GHOST("ghost", 1.6);

        private final String id;
        private final double usualWidth;

        Ink(String id, double usualWidth) {
            this.id = id;
            this.usualWidth = usualWidth;
        }

        /** The word used in files. */
        public String id() {
            return id;
        }

        /** How wide the line is where nothing else is said, in the drawing's units. */
        public double usualWidth() {
            return usualWidth;
        }
    }

    /** What an inside is filled with. */
    public enum Tone {
        /** Nothing; what lies behind shows. */
        NONE("fill-none"),
        /** The ground of the page: hides what lies behind. */
        PAPER("fill-paper"),
        /** Sheet metal in the light. */
        LIGHT("fill-light"),
        /** Frames, castings, what lies in the shade. */
        MID("fill-mid"),
        /** Rubber, openings. */
        DARK("fill-dark"),
        /** What the drawing is about, softly. */
        LIT("lit"),
        /** What the drawing is about, at full strength: arrows, dots, small pieces. */
        ACCENT("fill-accent");

        private final String id;

        Tone(String id) {
            this.id = id;
        }

        /** The word used in files. */
        public String id() {
            return id;
        }
    }
}
