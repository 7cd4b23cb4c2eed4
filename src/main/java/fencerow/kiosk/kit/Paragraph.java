package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/**
 * Running text with links in it. A touch near a link counts, so that a finger hits it although a line of text is lower
 * than a finger is wide; what links lead to is also offered by buttons elsewhere on the screen.
 */
public final class Paragraph extends TextFlow {
    private static final double REACH = 5;

    private record Link(Text word, Runnable action) {}

    private final Scale scale;
    private final List<Link> links = new ArrayList<>();

    /** Empty yet. */
    public Paragraph(Scale scale, String style) {
        this.scale = scale;
        getStyleClass().addAll("paragraph", style);
        setMinHeight(Region.USE_PREF_SIZE);
        addEventHandler(MouseEvent.MOUSE_CLICKED, this::clicked);
    }

    /** Words in a style, such as {@link Styles#STRONG}. */
    public Paragraph add(String words, String style) {
        Text text = new Text(words);
        text.getStyleClass().addAll("run", style);
        getChildren().add(text);
        return this;
    }

    /** Words that lead somewhere. */
    public Paragraph addLink(String words, Runnable action) {
        // One node a word: a link that wraps would have a box as wide as the paragraph.
        for (String part : words.split("(?<= )")) {
            Text text = new Text(part);
            text.getStyleClass().addAll("run", Styles.LINK);
            getChildren().add(text);
            links.add(new Link(text, action));
        }
        return this;
    }

    private void clicked(MouseEvent event) {
        if (event.isStillSincePress()) {
            links.stream()
                    .filter(link -> distance(link, event) <= scale.px(REACH))
                    .min((a, b) -> Double.compare(distance(a, event), distance(b, event)))
                    .ifPresent(link -> {
                        event.consume();
                        link.action().run();
                    });
        }
    }

    private double distance(Link link, MouseEvent event) {
        Bounds box = link.word().getBoundsInParent();
        Point2D at = new Point2D(event.getX(), event.getY());
        double x = Math.max(0, Math.max(box.getMinX() - at.getX(), at.getX() - box.getMaxX()));
        double y = Math.max(0, Math.max(box.getMinY() - at.getY(), at.getY() - box.getMaxY()));
        return Math.hypot(x, y);
    }
}
