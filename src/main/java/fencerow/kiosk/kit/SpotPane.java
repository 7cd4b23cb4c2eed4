package fencerow.kiosk.kit;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.Node;

/** Puts its parts where the width it gets lets them go, and is as high as that takes. */
abstract class SpotPane extends WidthFirst {
    /** Where a part goes, inside the pane's own edges. */
    record Spot(Node part, double x, double y, double width, double height) {}

    /** Where the parts go in a line of this width. */
    abstract List<Spot> spots(double inner);

    /** The width at which nothing has to give way. */
    abstract double fullWidth();

    @Override
    protected double computePrefWidth(double height) {
        Insets insets = getInsets();
        return fullWidth() + insets.getLeft() + insets.getRight();
    }

    @Override
    double heightAt(double width) {
        Insets insets = getInsets();
        double inner = (width < 0 ? computePrefWidth(-1) : width) - insets.getLeft() - insets.getRight();
        double bottom = spots(inner).stream().mapToDouble(spot -> spot.y() + spot.height()).max().orElse(0);
        return bottom + insets.getTop() + insets.getBottom();
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        for (Spot spot : spots(getWidth() - insets.getLeft() - insets.getRight())) {
            spot.part().resizeRelocate(
                    insets.getLeft() + spot.x(), insets.getTop() + spot.y(), spot.width(), spot.height());
        }
    }
}
