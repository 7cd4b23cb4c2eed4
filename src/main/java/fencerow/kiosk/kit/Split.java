package fencerow.kiosk.kit;

import javafx.geometry.Insets;
import javafx.scene.Node;

/**
 * A main part and a narrower one beside it, each as high as it needs; where the line is too short for both, the second
 * goes below the first.
 */
public final class Split extends WidthFirst {
    private static final double GAP = 8;

    private final Node main;
    private final Node side;
    private final double mainLeast;
    private final double sideWidth;
    private final double gap;

    /**
     * Arranges the parts.
     *
     * @param main     takes what is left
     * @param mainEms  the least width of the main part to have the other beside it, in ems
     * @param side     beside or below
     * @param sideEms  its width beside the main part, in ems
     */
    public Split(Scale scale, Node main, double mainEms, Node side, double sideEms) {
        this.main = main;
        this.side = side;
        this.mainLeast = mainEms * scale.em();
        this.sideWidth = Math.floor(sideEms * scale.em());
        this.gap = scale.whole(GAP);
        getChildren().setAll(main, side);
    }

    private boolean beside(double inner) {
        return inner >= mainLeast + gap + sideWidth;
    }

    private double inner(double width) {
        return width - getInsets().getLeft() - getInsets().getRight();
    }

    @Override
    protected double computePrefWidth(double height) {
        return mainLeast + gap + sideWidth + getInsets().getLeft() + getInsets().getRight();
    }

    @Override
    double heightAt(double width) {
        double inner = inner(width < 0 ? computePrefWidth(-1) : width);
        double height = beside(inner)
                ? Math.max(height(main, inner - gap - sideWidth), height(side, sideWidth))
                : height(main, inner) + gap + height(side, inner);
        return height + getInsets().getTop() + getInsets().getBottom();
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        double inner = inner(getWidth());
        double left = insets.getLeft();
        double top = insets.getTop();
        if (beside(inner)) {
            double mainWidth = inner - gap - sideWidth;
            main.resizeRelocate(left, top, mainWidth, height(main, mainWidth));
            side.resizeRelocate(left + mainWidth + gap, top, sideWidth, height(side, sideWidth));
        } else {
            double high = height(main, inner);
            main.resizeRelocate(left, top, inner, high);
            side.resizeRelocate(left, top + high + gap, inner, height(side, inner));
        }
    }
}
