package fencerow.kiosk;

import fencerow.kiosk.frame.Premises;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.application.Platform;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/**
 * Draws every screen in the ways it is walked in, as PNG files in {@code target/screens}, for looking at.
 *
 * <p>Arguments: a part of a screen's name, and a part of a way's name; with the latter every such way is drawn.
 */
public final class ContactSheet {
    private static final Path FOLDER = Path.of("target", "screens");

    private ContactSheet() {}

    /** Draws. */
    public static void main(String[] arguments) throws IOException {
        String screen = arguments.length > 0 ? arguments[0] : "";
        String way = arguments.length > 1 ? arguments[1] : "";
        Files.createDirectories(FOLDER);
        Premises premises = Rooms.premises();
        for (WalkPlace place : WalkPlace.all()) {
            for (Cell cell : way.isEmpty() ? Cell.of(place.name()) : Cell.all()) {
                if (place.name().contains(screen) && cell.toString().contains(way)) {
                    save(Fx.on(() -> cell.show(premises, place, shown -> shown.scene().snapshot(null))),
                            FOLDER.resolve(place.name() + "-" + cell + ".png"));
                }
            }
        }
        Platform.exit();
    }

    private static void save(WritableImage image, Path file) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        copy.setRGB(0, 0, width, height, pixels, 0, width);
        try {
            ImageIO.write(copy, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
