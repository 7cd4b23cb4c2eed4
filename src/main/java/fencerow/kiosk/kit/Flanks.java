package fencerow.kiosk.kit;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.Node;

/** Something in the middle of a line, with buttons at both ends that keep their width; the middle gives way. */
public final class Flanks extends WidthFirst {
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

    private double end(Optional<Node> part) {
        return part.map(each -> width(each) + gap).orElse(0.0);
    }

    private double middleWidth(double width) {
        Insets insets = getInsets();
        return Math.max(0, width - insets.getLeft() - insets.getRight() - end(left) - end(right));
    }

    @Override
    protected double computePrefWidth(double height) {
        Insets insets = getInsets();
        return end(left) + width(middle) + end(right) + insets.getLeft() + insets.getRight();
    }

    @Override
    double heightAt(double width) {
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
