package fencerow.kiosk;

import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.explainers.Picture;
import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.PartMark;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.TextSize;
import fencerow.kiosk.kit.Theme;
import fencerow.printing.DrawingPainter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javax.imageio.ImageIO;

/**
 * Draws every picture of the content as sheets of twelve in {@code target/pictures}, for looking at: on screen, on
 * screen in high contrast, on paper, and the whole tractors with their parts marked in turn.
 */
public final class DrawingSheet {
    private static final Path FOLDER = Path.of("target", "pictures");
    private static final int ACROSS = 3;
    private static final int DOWN = 4;
    private static final int WIDTH = 600;
    private static final int HEIGHT = 400;

    private DrawingSheet() {}

    /** How a picture becomes an image. */
    private interface Painter {
        BufferedImage paint(Picture picture) throws IOException;
    }

    /** Draws. */
    public static void main(String[] arguments) throws IOException {
        Reading<Content> reading =
                new ContentReader().read(Path.of("content"), Path.of("kiosk-config"), Optional.empty());
        if (!(reading instanceof Reading.Good<Content> good)) {
            throw new IllegalStateException("the content cannot be read; run the check");
        }
        Map<String, Picture> all = good.content().getLibrary("en").pictures().byName();
        List<Picture> pictures = new TreeSet<>(all.keySet()).stream()
                .flatMap(name -> Optional.ofNullable(all.get(name)).stream())
                .toList();
        Files.createDirectories(FOLDER);
        sheets("screen", pictures, picture -> onScreen(picture, false, Map.of()));
        sheets("contrast", pictures, picture -> onScreen(picture, true, Map.of()));
        sheets("paper", pictures, DrawingSheet::onPaper);
        sheets("marked", pictures.stream().filter(each -> each.name().startsWith("tractor-")).toList(),
                picture -> onScreen(picture, false, inTurn(picture)));
        Platform.exit();
    }

    private static Map<String, PartMark> inTurn(Picture picture) {
        List<PartMark> marks = List.of(PartMark.values());
        Map<String, PartMark> inTurn = new HashMap<>();
        for (String part : picture.drawing().parts()) {
            inTurn.put(part, marks.get(inTurn.size() % marks.size()));
        }
        return inTurn;
    }

    private static void sheets(String name, List<Picture> pictures, Painter painter) throws IOException {
        List<BufferedImage> images = new ArrayList<>();
        for (Picture picture : pictures) {
            images.add(painter.paint(picture));
        }
        int each = ACROSS * DOWN;
        for (int from = 0; from < images.size(); from += each) {
            List<BufferedImage> some = images.subList(from, Math.min(images.size(), from + each));
            var sheet = new BufferedImage(ACROSS * WIDTH, DOWN * HEIGHT, BufferedImage.TYPE_INT_RGB);
            Graphics2D graphics = sheet.createGraphics();
            for (int i = 0; i < some.size(); i++) {
                graphics.drawImage(some.get(i), i % ACROSS * WIDTH, i / ACROSS * HEIGHT, null);
                graphics.setColor(Color.GRAY);
                graphics.drawRect(i % ACROSS * WIDTH, i / ACROSS * HEIGHT, WIDTH, HEIGHT);
            }
            graphics.dispose();
            ImageIO.write(sheet, "png", FOLDER.resolve(name + "-" + (from / each + 1) + ".png").toFile());
        }
    }

    private static BufferedImage onPaper(Picture picture) {
        var image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, HEIGHT);
        new DrawingPainter().paint(picture.drawing(), graphics, 0, 0, WIDTH, HEIGHT);
        graphics.dispose();
        return image;
    }

    private static BufferedImage onScreen(Picture picture, boolean highContrast, Map<String, PartMark> marks) {
        WritableImage shot = Fx.on(() -> {
            DrawingPane pane = new DrawingPane(picture.drawing(), picture.name());
            pane.mark(marks);
            StackPane root = new StackPane(pane);
            root.getStyleClass().addAll(Styles.SHELL, Styles.SCREEN);
            if (highContrast) {
                root.getStyleClass().add(Styles.HIGH_CONTRAST);
            }
            Scene scene = new Scene(root, WIDTH, HEIGHT);
            scene.getStylesheets().setAll(Theme.stylesheet(new Scale(3.2, TextSize.NORMAL), highContrast));
            root.applyCss();
            root.layout();
            return scene.snapshot(null);
        });
        int[] pixels = new int[WIDTH * HEIGHT];
        shot.getPixelReader().getPixels(0, 0, WIDTH, HEIGHT, PixelFormat.getIntArgbInstance(), pixels, 0, WIDTH);
        var image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, WIDTH, HEIGHT, pixels, 0, WIDTH);
        return image;
    }
}
