package fencerow.kiosk.matching;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;

/** A unit's photograph, read for the screen; nothing where the file is damaged, so that the drawing stands alone. */
public final class Photograph {
    private final Optional<Image> image;

    private Photograph(Optional<Image> image) {
        this.image = image;
    }

    /**
     * Reads it; takes a while.
     *
     * @param bytes of a PNG or JPEG file
     * @param dots  the most there are to be across and down
     */
    public static Photograph of(Optional<byte[]> bytes, double dots) {
        return new Photograph(bytes
                .map(all -> new Image(new ByteArrayInputStream(all), dots, dots, true, true))
                .filter(read -> !read.isError() && read.getWidth() > 0));
    }

    /** The picture at most so wide and so high, in pixels. */
    public Optional<ImageView> findView(double width, double height) {
        return image.map(read -> {
            ImageView view = new ImageView(read);
            view.setPreserveRatio(true);
            view.setSmooth(true);
            view.setFitWidth(Math.min(width, read.getWidth()));
            view.setFitHeight(Math.min(height, read.getHeight()));
            return view;
        });
    }
}
