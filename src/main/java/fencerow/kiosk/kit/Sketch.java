package fencerow.kiosk.kit;

import fencerow.explainers.Drawing;
import fencerow.explainers.Picture;
import fencerow.wording.Texts;
import java.util.Optional;

/**
 * A drawing, and what it shows in words.
 *
 * @param alternative for whoever cannot see it
 */
public record Sketch(Drawing drawing, String alternative) {
    /** A picture with its words in a language. */
    public static Sketch of(Picture picture, Texts texts) {
        return new Sketch(picture.drawing(), texts.get(picture.altKey()));
    }

    /** The same where there is a picture. */
    public static Optional<Sketch> of(Optional<Picture> picture, Texts texts) {
        return picture.map(each -> of(each, texts));
    }

    /** It, to be looked at. */
    public DrawingPane pane() {
        return new DrawingPane(drawing, alternative);
    }
}
