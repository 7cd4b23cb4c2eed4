package fencerow.explainers;

import java.util.List;

/** What a drawing is made of. */
public sealed interface Piece {
    /**
     * A named part, which can be pointed at and lit up. Parts may hold parts.
     *
     * @param id     the topic it is about
     * @param pieces in drawing order
     */
    record Part(String id, List<Piece> pieces) implements Piece {
        /** Copies the pieces. */
        public Part {
            pieces = List.copyOf(pieces);
        }
    }

    /** An outline, drawn and filled. */
    record Shape(Outline outline, Look look) implements Piece {
        /** How far the point is from it: 0 on its line or, if it is filled, inside. */
        double distance(double x, double y) {
            if (look.tone() != Look.Tone.NONE && outline.contains(x, y)) {
                return 0;
            }
            return Math.max(0, outline.distance(x, y) - lineWidth() / 2);
        }

        private double lineWidth() {
            return look.ink() == Look.Ink.NONE ? 0 : look.width();
        }

        /** How thick it is where it is thin: the width of a bare line; of what is filled, that of a disc or a bar. */
        double thickness() {
            Bounds box = outline.bounds();
            double length = outline.length();
            if (look.tone() == Look.Tone.NONE || length == 0) {
                return lineWidth();
            }
            return Math.min(4 * outline.area() / length, Math.min(box.width(), box.height())) + lineWidth();
        }

        /** How much of the drawing it takes up; what is not filled, all it encloses. */
        double area() {
            Bounds box = outline.bounds();
            return look.tone() == Look.Tone.NONE ? box.width() * box.height() : outline.area();
        }
    }

    /**
     * A word or number, always upright; for what is the same in all languages.
     *
     * @param words  short
     * @param x      of the anchor
     * @param y      of the line the letters stand on
     * @param size   of the type, in the drawing's units
     * @param anchor which end of the words lies at {@code x}
     * @param tone   of the letters
     */
    record Label(String words, double x, double y, double size, Anchor anchor, Look.Tone tone) implements Piece {}

    /** Which end of a label its {@code x} is. */
    enum Anchor {
        /** Its start. */
        START("start"),
        /** Its middle. */
        MIDDLE("middle"),
        /** Its end. */
        END("end");

        private final String id;

        Anchor(String id) {
            this.id = id;
        }

        /** The word used in files. */
        public String id() {
            return id;
        }
    }
}
