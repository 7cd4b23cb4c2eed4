package fencerow.kiosk;

import fencerow.kiosk.kit.DrawingPane;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.kordamp.ikonli.javafx.FontIcon;

/**
 * What must hold of the pixels that a screen comes to: words stand out from what is behind them by 4.5 to 1, icons and
 * the edges of what can be touched by 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11). What is switched off is exempt there.
 */
final class PixelRules {
    private static final double WORDS = 4.5;
    private static final double SHAPES = 3;
    /** How far outside and inside an edge it is looked for, in pixels. */
    private static final int REACH = 4;
    private static final Set<String> EDGED =
            Set.of(Styles.PRIMARY, Styles.SECONDARY, Styles.TILE, Styles.KEY, Styles.GUTTER, "door");

    private final WritableImage image;
    private final PixelReader pixels;
    private final List<String> broken = new ArrayList<>();

    private PixelRules(WritableImage image) {
        this.image = image;
        this.pixels = image.getPixelReader();
    }

    static List<String> broken(Shown shown) {
        var rules = new PixelRules(shown.scene().snapshot(null));
        rules.look(LayoutRules.top(shown.scene().getRoot()));
        return rules.broken;
    }

    private void look(Node node) {
        if (!node.isVisible() || node.isDisabled() || node instanceof DrawingPane) {
            return;
        }
        if (node instanceof Label label && !label.getText().isEmpty()) {
            check(label, WORDS);
        } else if (node instanceof FontIcon icon) {
            if (icon.getIconColor() instanceof Color color && color.isOpaque()) {
                check(icon, SHAPES);
            }
        } else if (node instanceof Text text && !text.getText().isBlank()) {
            check(node, WORDS);
        } else if (node instanceof Parent parent) {
            if (node instanceof Touch && node.getStyleClass().stream().anyMatch(EDGED::contains)) {
                checkEdge(node);
            }
            parent.getChildrenUnmodifiable().forEach(this::look);
        }
    }

    /** Holds the pixel that stands out most against the colour that most pixels have. */
    private void check(Node node, double least) {
        Bounds box = LayoutRules.visible(node);
        Map<Color, Integer> counts = new HashMap<>();
        for (int y = (int) Math.max(0, box.getMinY()); y < Math.min(image.getHeight(), box.getMaxY()); y++) {
            for (int x = (int) Math.max(0, box.getMinX()); x < Math.min(image.getWidth(), box.getMaxX()); x++) {
                counts.merge(pixels.getColor(x, y), 1, Integer::sum);
            }
        }
        boolean partly = !box.equals(LayoutRules.box(node));
        if (counts.isEmpty() || partly) {
            return;
        }
        Color ground = counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
        double best = counts.keySet().stream().mapToDouble(each -> contrast(each, ground)).max().orElseThrow();
        if (best < least) {
            broken.add(String.format(
                    Locale.ROOT, "[%s] stands out by %.2f to 1 only", LayoutRules.name(node), best));
        }
    }

    private void checkEdge(Node touch) {
        Bounds box = LayoutRules.visible(touch);
        int left = (int) Math.round(touch.localToScene(touch.getLayoutBounds()).getMinX());
        int y = (int) (box.getMinY() + box.getMaxY()) / 2;
        if (box.getWidth() < 2 * REACH || box.getHeight() < 2 * REACH || left < REACH || left > box.getMinX() + 1) {
            return;
        }
        Color outside = pixels.getColor(left - REACH, y);
        double best = 0;
        for (int x = left - REACH + 1; x <= left + REACH; x++) {
            best = Math.max(best, contrast(pixels.getColor(x, y), outside));
        }
        if (best < SHAPES) {
            broken.add(String.format(
                    Locale.ROOT, "the edge of [%s] stands out by %.2f to 1 only", LayoutRules.name(touch), best));
        }
    }

    /** WCAG 2.2's contrast ratio. */
    static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Relative luminance of sRGB, as WCAG 2.2 defines it. */
    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
