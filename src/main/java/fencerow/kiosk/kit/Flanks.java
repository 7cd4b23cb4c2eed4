package fencerow.kiosk.kit;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/** Something in the middle of a line, with buttons at both ends that keep their width; the middle gives way. */
public final class Flanks extends Pane {
    private static final double GAP = 5;

    private final Optional<Node> left;
    private final Node middle;
    private final Optional<Node> right;
    private final double gap;

    /** Arranges the parts. */
    public Flanks(Scale scale, Optional<Node> left, Node middle, Optional<Node> right) {
        this.left = left;
        this.middle = middle;
        this.right = right;
        this.gap = scale.whole(GAP);
        left.ifPresent(getChildren()::add);
        getChildren().add(middle);
        right.ifPresent(getChildren()::add);
    }

    private static double width(Node part) {
        return Math.ceil(Math.max(part.minWidth(-1), part.prefWidth(-1)));
    }

    private static double height(Node part, double width) {
        return Math.ceil(Math.max(part.minHeight(width), part.prefHeight(width)));
    }

    private double end(Optional<Node> part) {
        return part.map(each -> width(each) + gap).orElse(0.0);
    }

    private double middleWidth(double width) {
        Insets insets = getInsets();
        return Math.max(0, width - insets.getLeft() - insets.getRight() - end(left) - end(right));
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computePrefWidth(double height) {
        Insets insets = getInsets();
        return end(left) + width(middle) + end(right) + insets.getLeft() + insets.getRight();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        double whole = width < 0 ? computePrefWidth(-1) : width;
        double highest = height(middle, middleWidth(whole));
        for (Optional<Node> part : List.of(left, right)) {
            highest = Math.max(highest, part.map(each -> height(each, width(each))).orElse(0.0));
        }
        return highest + getInsets().getTop() + getInsets().getBottom();
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        double room = getHeight() - insets.getTop() - insets.getBottom();
        double x = insets.getLeft();
        left.ifPresent(each -> put(each, insets.getLeft(), width(each), room));
        put(middle, x + end(left), middleWidth(getWidth()), room);
        right.ifPresent(each -> put(each, getWidth() - insets.getRight() - width(each), width(each), room));
    }

    private void put(Node part, double x, double width, double room) {
        double height = Math.min(room, height(part, width));
        double y = getInsets().getTop() + Math.max(0, Math.rint((room - height) / 2));
        part.resizeRelocate(x, y, width, height);
    }
}
