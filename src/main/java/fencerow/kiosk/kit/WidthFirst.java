package fencerow.kiosk.kit;

import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/** Shares out its width first, and is as high as its parts then are; never lower. */
abstract class WidthFirst extends Pane {
    private final Heights heights = new Heights();

    /** How high it has to be at the width, its own edges included; below 0 is no width in particular. */
    abstract double heightAt(double width);

    /** How high the part is at the width, in whole pixels. */
    static double height(Node part, double width) {
        return Math.ceil(Math.max(part.minHeight(width), part.prefHeight(width)));
    }

    /** How wide the part would be, in whole pixels. */
    static double width(Node part) {
        return Math.ceil(Math.max(part.minWidth(-1), part.prefWidth(-1)));
    }

    @Override
    public final void requestLayout() {
        heights.forget();
        super.requestLayout();
    }

    @Override
    public final Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected final double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected final double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected final double computePrefHeight(double width) {
        return heights.at(width, this::heightAt);
    }
}
