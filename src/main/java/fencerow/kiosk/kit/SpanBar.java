package fencerow.kiosk.kit;

import java.util.Optional;
import javafx.scene.layout.Region;

/**
 * A number drawn to scale, and where it is an estimate a line from its lower to its upper bound. Bars of one list share
 * one scale. Words beside it say the same in figures.
 */
public final class SpanBar extends Bar {
    private static final double HEIGHT = 5;
    private static final double LINE = 1;

    private final double number;
    private final Optional<Ends> ends;
    private final double line;
    private final Region bar = part("bar");
    private final Region between = part("between");
    private final Region least = part("between");
    private final Region most = part("between");

    /** Bounds, as shares of the longest bar. */
    public record Ends(double low, double high) {}

    /**
     * Draws a number.
     *
     * @param number as a share of the longest bar, 0 to 1
     * @param ends   of the estimate, if it is one
     * @param name   the same in words, for assistive tools
     */
    public SpanBar(Scale scale, double number, Optional<Ends> ends, String name) {
        super(scale, HEIGHT, "span-bar", name);
        this.number = number;
        this.ends = ends;
        this.line = Math.max(2, Math.round(scale.px(LINE)));
        getChildren().setAll(bar);
        if (ends.isPresent()) {
            getChildren().addAll(between, least, most);
        }
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth() - line;
        bar.resizeRelocate(0, 0, Math.max(line, Math.rint(width * number)), height);
        ends.ifPresent(bounds -> {
            double low = Math.rint(width * bounds.low());
            double high = Math.rint(width * bounds.high());
            between.resizeRelocate(low, Math.rint((height - line) / 2), high - low, line);
            least.resizeRelocate(low, 0, line, height);
            most.resizeRelocate(high, 0, line, height);
        });
    }
}
