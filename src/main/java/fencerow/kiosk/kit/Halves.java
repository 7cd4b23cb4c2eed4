package fencerow.kiosk.kit;

import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * Two parts that share all the room there is: beside each other where it is wider than high, else one below the other,
 * where the first gets more than its share if it needs it.
 */
public final class Halves extends Pane {
    /** What the first part may take where it needs more than its share. */
    private static final double MOST = 0.75;

    private final Node first;
    private final Node second;
    private final double share;

    /**
     * Arranges the parts.
     *
     * @param share of the room that the first part gets, between 0 and 1
     */
    public Halves(Node first, Node second, double share) {
        this.first = first;
        this.second = second;
        this.share = share;
        getChildren().setAll(first, second);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }

    /** Takes the room there is, whatever the parts would like. */
    @Override
    protected double computePrefHeight(double width) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        if (width > height) {
            double left = Math.round(share * width);
            first.resizeRelocate(0, 0, left, height);
            second.resizeRelocate(left, 0, width - left, height);
        } else {
            double needed = Math.max(share * height, first.prefHeight(width));
            double top = Math.round(Math.min(MOST * height, needed));
            first.resizeRelocate(0, 0, width, top);
            second.resizeRelocate(0, top, width, height - top);
        }
    }
}
