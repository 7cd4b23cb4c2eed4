package fencerow.kiosk.unit;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;

/** A unit's photograph, read for the screen; nothing where the file is damaged, so that the drawing stands alone. */
final class Photograph {
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
    static Photograph of(Optional<byte[]> bytes, double dots) {
        return new Photograph(bytes
                .map(all -> new Image(new ByteArrayInputStream(all), dots, dots, true, true))
                .filter(read -> !read.isError() && read.getWidth() > 0));
    }

    /** The picture at most so high. */
    Optional<ImageView> findView(double height) {
        return image.map(read -> {
            ImageView view = new ImageView(read);
            view.setPreserveRatio(true);
            view.setSmooth(true);
            view.setFitHeight(Math.min(height, read.getHeight()));
            return view;
        });
    }
}
