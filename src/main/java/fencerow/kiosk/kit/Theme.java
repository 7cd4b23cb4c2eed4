package fencerow.kiosk.kit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;

/**
 * The look: stylesheets in which {@code mm} are true millimetres on the panel and {@code em} follow the text size.
 * Colours are tokens that a theme sets; every other rule names tokens only.
 */
public final class Theme {
    private static final String FONTS = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
    private static final List<String> FACES = List.of("Regular", "Italic", "Light", "Medium", "Bold");
    private static final List<String> SHEETS =
            List.of("type.css", "layout.css", "controls.css", "learn.css", "match.css", "quiz.css", "drawing.css",
                    "work.css");
    private static final Pattern MILLIMETRES = Pattern.compile("(-?\\d*\\.?\\d+)mm\\b");
    private static final Pattern PAPER = Pattern.compile("-paper: (#[0-9a-f]{6});");
    private static final double ANY_SIZE = 12;

    private Theme() {}

    /** Loads the typeface. @throws IllegalStateException if a face is missing from the class path or is broken */
    public static void loadFonts() {
        for (String face : FACES) {
            try (InputStream file = open(FONTS + face + ".ttf")) {
                if (Font.loadFont(file, ANY_SIZE) == null) {
                    throw new IllegalStateException("the typeface Roboto " + face + " cannot be read");
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** What the screen is filled with before anything is drawn on it. */
    public static Color ground() {
        Matcher paper = PAPER.matcher(read("tokens.css"));
        if (!paper.find()) {
            throw new IllegalStateException("the theme sets no -paper; set it in tokens.css");
        }
        return Color.web(paper.group(1));
    }

    /** The stylesheet for the scale, as an address that JavaFX takes. */
    public static String stylesheet(Scale scale, boolean highContrast) {
        StringBuilder css = new StringBuilder(read("tokens.css"));
        if (highContrast) {
            css.append(read("high-contrast.css"));
        }
        css.append(String.format(Locale.ROOT, ".root { -fx-font-size: %.2fpx; }%n", scale.em()));
        SHEETS.forEach(sheet -> css.append(read(sheet)));
        String pixels = MILLIMETRES.matcher(css)
                .replaceAll(found -> pixels(scale, Double.parseDouble(found.group(1))));
        return "data:text/css;charset=UTF-8;base64,"
                + Base64.getEncoder().encodeToString(pixels.getBytes(StandardCharsets.UTF_8));
    }

    /** Whole, so that edges fall on pixels and stay sharp. */
    private static String pixels(Scale scale, double millimetres) {
        return (int) Math.rint(scale.px(millimetres)) + "px";
    }

    private static String read(String sheet) {
        try (InputStream file = open("/fencerow/kiosk/theme/" + sheet)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String path) {
        InputStream file = Theme.class.getResourceAsStream(path);
        if (file == null) {
            throw new IllegalStateException("[" + path + "] is not on the class path; build the kiosk again");
        }
        return file;
    }
}
