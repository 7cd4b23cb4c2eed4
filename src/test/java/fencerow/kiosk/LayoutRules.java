package fencerow.kiosk;

import fencerow.kiosk.kit.Paragraph;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.TextSize;
import fencerow.kiosk.kit.Touch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.kordamp.ikonli.javafx.FontIcon;

/**
 * What must hold on every screen. Numbers: targets and gaps after studies of touch kiosks (20 mm preferred, 15 mm a
 * floor of our own, 3 mm between), capitals after ADA Standards 707.7.2 (4.8 mm) and EN 301 549 5.1.4 (0.7 degrees at
 * 600 mm are 7.33 mm), nothing lost at 200 % after WCAG 2.2 1.4.4.
 */
final class LayoutRules {
    private static final Set<String> FAMILIES = Set.of("Roboto", "Roboto Light", "Roboto Medium");
    private static final Set<String> BIG = Set.of(Styles.PRIMARY, Styles.SECONDARY, Styles.TILE, "door");
    /** The share of the height above which nothing is touched by who cannot reach up, upright, in the usual size. */
    private static final double BEYOND_REACH = 0.15;
    private static final double SLACK = 1.5;

    private final Scale scale;
    private final Cell cell;
    private final Scene scene;
    private final List<String> broken = new ArrayList<>();
    private final List<Node> words = new ArrayList<>();
    private final List<Touch> targets = new ArrayList<>();

    LayoutRules(Scene scene, Cell cell) {
        this.scene = scene;
        this.cell = cell;
        this.scale = cell.scale();
    }

    List<String> broken() {
        collect(top(scene.getRoot()));
        words.forEach(this::checkWords);
        checkOverlaps();
        targets.forEach(this::checkTarget);
        checkGaps();
        return broken;
    }

    /** What lies on top: a sheet hides what is below it. */
    static Node top(Parent root) {
        List<Node> covers = new ArrayList<>(root.lookupAll(".cover"));
        return covers.isEmpty() ? root : covers.get(covers.size() - 1);
    }

    private void collect(Node node) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Touch touch && !touch.getStyleClass().contains(Styles.SCRIM)) {
            targets.add(touch);
        }
        if (node instanceof Label label && label.getText().isEmpty()) {
            return;
        }
        if (node instanceof Label || node instanceof Text || node instanceof Paragraph) {
            words.add(node);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::collect);
        }
    }

    private void checkWords(Node node) {
        if (node instanceof Label label) {
            Text shown = (Text) label.lookup(".text");
            if (!shown.getText().equals(label.getText())) {
                broken.add("cut off: [" + label.getText() + "] to [" + shown.getText() + "]");
            }
            checkFont(label.getFont(), label.getText());
            checkLongWords(label.getText(), label.getFont(), label.getWidth());
        } else if (node instanceof Paragraph paragraph) {
            if (paragraph.getHeight() < paragraph.prefHeight(paragraph.getWidth()) - SLACK) {
                broken.add("paragraph cut off: " + name(node));
            }
            for (Node run : paragraph.getChildrenUnmodifiable()) {
                checkFont(((Text) run).getFont(), ((Text) run).getText());
                checkLongWords(((Text) run).getText(), ((Text) run).getFont(), paragraph.getWidth());
            }
        }
        checkInside(node);
    }

    private void checkFont(Font font, String text) {
        double capitals = font.getSize() * Scale.CAPITALS / scale.pixelsPerMillimetre();
        double least = switch (cell.textSize()) {
            case NORMAL -> 4.8;
            case LARGE -> 7.33;
            case DOUBLE -> 9.6;
        };
        if (capitals < least) {
            broken.add(String.format(Locale.ROOT, "capitals of %.2f mm in [%s]", capitals, text));
        }
        if (!FAMILIES.contains(font.getFamily())) {
            broken.add("typeface " + font.getFamily() + " in [" + text + "]");
        }
    }

    private void checkLongWords(String text, Font font, double width) {
        for (String word : text.split("\\s+|(?<=-)")) {
            Text measure = new Text(word);
            measure.setFont(font);
            if (measure.getLayoutBounds().getWidth() > width + SLACK) {
                broken.add("[" + word + "] is broken or cut: wider than its line of " + Math.round(width) + " px");
            }
        }
    }

    /** The words lie inside everything around them; only a column may be longer than its window. */
    private void checkInside(Node node) {
        Bounds box = box(node);
        for (Parent around = node.getParent(); around != null; around = around.getParent()) {
            Bounds outer = around.localToScene(around.getLayoutBounds());
            boolean window = around.getClip() != null;
            boolean across = box.getMinX() >= outer.getMinX() - SLACK && box.getMaxX() <= outer.getMaxX() + SLACK;
            boolean down = box.getMinY() >= outer.getMinY() - SLACK && box.getMaxY() <= outer.getMaxY() + SLACK;
            if (!across || !window && !down) {
                broken.add("[" + name(node) + "] sticks out of " + around.getClass().getSimpleName()
                        + around.getStyleClass());
                return;
            }
            if (window) {
                box = common(box, outer);
                if (box.isEmpty()) {
                    return;
                }
            }
        }
        if (box.getMaxX() > cell.width() + SLACK || box.getMaxY() > cell.height() + SLACK) {
            broken.add("[" + name(node) + "] lies outside the screen");
        }
    }

    private void checkOverlaps() {
        List<Bounds> boxes = words.stream().map(LayoutRules::visible).toList();
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                Bounds both = common(boxes.get(i), boxes.get(j));
                if (both.getWidth() > 2 * SLACK && both.getHeight() > 2 * SLACK) {
                    broken.add("[" + name(words.get(i)) + "] and [" + name(words.get(j)) + "] overlap");
                }
            }
        }
    }

    private void checkTarget(Touch touch) {
        double least = scale.px(touch.getStyleClass().stream().anyMatch(BIG::contains) ? 20 : 15) - 0.5;
        if (touch.getWidth() < least || touch.getHeight() < least) {
            broken.add(String.format(Locale.ROOT, "target [%s] is %.1f x %.1f mm", touch.getAccessibleText(),
                    touch.getWidth() / scale.px(1), touch.getHeight() / scale.px(1)));
        }
        boolean low = cell.lowReach() && cell.portrait() && cell.textSize() == TextSize.NORMAL;
        if (low && visible(touch).getMinY() < BEYOND_REACH * cell.height() && !touch.getStyleClass()
                .contains("attract-touch")) {
            broken.add("target [" + touch.getAccessibleText() + "] is too high up to reach");
        }
        String name = touch.getAccessibleText();
        if (name == null || name.isBlank()) {
            broken.add("a target without a name: " + touch.getStyleClass());
        } else if (touch.getAccessibleRole() == AccessibleRole.NODE) {
            broken.add("target [" + name + "] has no role");
        } else if (!wordsOn(touch).isEmpty() && wordsOn(touch).stream().noneMatch(name::startsWith)) {
            broken.add("target [" + name + "] is not called what stands on it: " + wordsOn(touch));
        }
        checkInside(touch);
    }

    /** The words that stand on it: what somebody would call it who sees it (WCAG 2.2, 2.5.3). */
    private static List<String> wordsOn(Node node) {
        if (node instanceof Paragraph paragraph) {
            return List.of(paragraph.getChildrenUnmodifiable().stream()
                    .map(run -> ((Text) run).getText()).collect(Collectors.joining()));
        }
        if (node instanceof Label label) {
            return label.getText().codePoints().anyMatch(Character::isLetter) ? List.of(label.getText()) : List.of();
        }
        return node instanceof Parent parent && node.isVisible()
                ? parent.getChildrenUnmodifiable().stream().flatMap(each -> wordsOn(each).stream()).toList()
                : List.of();
    }

    private void checkGaps() {
        double least = scale.px(3) - 0.75;
        List<Bounds> boxes = targets.stream().map(LayoutRules::visible).toList();
        for (int i = 0; i < targets.size(); i++) {
            Bounds one = boxes.get(i);
            for (int j = i + 1; j < targets.size(); j++) {
                Bounds other = boxes.get(j);
                if (one.isEmpty() || other.isEmpty()) {
                    continue;
                }
                double across = Math.max(other.getMinX() - one.getMaxX(), one.getMinX() - other.getMaxX());
                double down = Math.max(other.getMinY() - one.getMaxY(), one.getMinY() - other.getMaxY());
                if (Math.max(across, down) < least) {
                    broken.add(String.format(Locale.ROOT, "targets [%s] and [%s] are %.1f mm apart",
                            targets.get(i).getAccessibleText(), targets.get(j).getAccessibleText(),
                            Math.max(across, down) / scale.px(1)));
                }
            }
        }
    }

    static Bounds box(Node node) {
        Node inner = node instanceof Label label ? label.lookup(".text") : node;
        return inner == null ? node.localToScene(node.getLayoutBounds()) : inner.localToScene(inner.getLayoutBounds());
    }

    static Bounds visible(Node node) {
        Bounds box = box(node);
        for (Parent around = node.getParent(); around != null; around = around.getParent()) {
            if (around.getClip() != null) {
                box = common(box, around.localToScene(around.getLayoutBounds()));
            }
        }
        return box;
    }

    private static Bounds common(Bounds one, Bounds other) {
        double x = Math.max(one.getMinX(), other.getMinX());
        double y = Math.max(one.getMinY(), other.getMinY());
        double width = Math.min(one.getMaxX(), other.getMaxX()) - x;
        double height = Math.min(one.getMaxY(), other.getMaxY()) - y;
        return new BoundingBox(x, y, Math.max(-1, width), Math.max(-1, height));
    }

    static String name(Node node) {
        if (node instanceof Label label) {
            return label.getText();
        }
        if (node instanceof FontIcon icon) {
            return "icon " + icon.getIconCode();
        }
        if (node instanceof Touch touch) {
            return touch.getAccessibleText();
        }
        return node instanceof Paragraph paragraph
                ? ((Text) paragraph.getChildrenUnmodifiable().get(0)).getText()
                : node.toString();
    }
}
