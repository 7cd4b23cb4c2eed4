package fencerow.kiosk.kit;

import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * Two parts that share all the room there is: beside each other where it is wider than high, else one below the other.
 * The first gets more than its share where it needs it.
 */
public final class Halves extends Pane {
    private static final double MOST_ABOVE = 0.75;
    private static final double MOST_BESIDE = 0.68;
    private static final double WIDER = 0.04;

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
            double left = left(width, height);
            first.resizeRelocate(0, 0, left, height);
            second.resizeRelocate(left, 0, width - left, height);
        } else {
            double needed = Math.max(share * height, first.prefHeight(width));
            double top = Math.round(Math.min(MOST_ABOVE * height, needed));
            first.resizeRelocate(0, 0, width, top);
            second.resizeRelocate(0, top, width, height - top);
        }
    }

    private double left(double width, double height) {
        double part = share;
        while (part + WIDER <= MOST_BESIDE && first.prefHeight(Math.rint(part * width)) > height) {
            part += WIDER;
        }
        return Math.rint(part * width);
    }
}
