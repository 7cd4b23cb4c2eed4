package fencerow.kiosk.kit;

import javafx.geometry.Insets;
import javafx.scene.Node;

/** Two parts at the two ends of a line; where they do not fit beside each other, the second is put below the first. */
public final class Ends extends WidthFirst {
    private static final double GAP = 4;

    private final Node first;
    private final Node second;
    private final double gap;
    private boolean toTheRight;

    /** Arranges the parts. */
    public Ends(Scale scale, Node first, Node second) {
        this.first = first;
        this.second = second;
        this.gap = scale.whole(GAP);
        getChildren().setAll(first, second);
    }

    /** Puts the second part at the right end even where it is below the first. */
    public Ends toTheRight() {
        toTheRight = true;
        return this;
    }

    private boolean besideEachOther(double inner) {
        return width(first) + gap + width(second) <= inner;
    }

    private double inner(double width) {
        return width - getInsets().getLeft() - getInsets().getRight();
    }

    @Override
    protected double computePrefWidth(double height) {
        Insets insets = getInsets();
        return width(first) + gap + width(second) + insets.getLeft() + insets.getRight();
    }

    @Override
    double heightAt(double width) {
        double inner = inner(width < 0 ? computePrefWidth(-1) : width);
        double height = besideEachOther(inner)
                ? Math.max(height(first, width(first)), height(second, width(second)))
                : height(first, inner) + gap + height(second, inner);
        return height + getInsets().getTop() + getInsets().getBottom();
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        double inner = inner(getWidth());
        if (besideEachOther(inner)) {
            double height = getHeight() - insets.getTop() - insets.getBottom();
            first.resizeRelocate(insets.getLeft(), insets.getTop(), width(first), height);
            double x = insets.getLeft() + inner - width(second);
            second.resizeRelocate(x, insets.getTop(), width(second), height);
        } else {
            double high = height(first, inner);
            first.resizeRelocate(insets.getLeft(), insets.getTop(), Math.min(inner, width(first)), high);
            double y = insets.getTop() + high + gap;
            double wide = toTheRight ? Math.min(inner, width(second)) : inner;
            second.resizeRelocate(insets.getLeft() + inner - wide, y, wide, height(second, wide));
        }
    }
}
