package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.Node;

/** Equal columns, as many as fit; each part is as high as it needs and goes where the least stands so far. */
public final class Masonry extends WidthFirst {
    private static final double GAP = 5;

    private final double least;
    private final double gap;
    private final int most;

    /**
     * Arranges parts.
     *
     * @param scale of the panel
     * @param ems   the least width of a column, in ems
     * @param most  columns
     */
    public Masonry(Scale scale, double ems, int most, Collection<? extends Node> parts) {
        this.least = ems * scale.em();
        this.gap = scale.whole(GAP);
        this.most = most;
        getChildren().setAll(parts);
    }

    /** A part's place, without the insets. */
    private record Spot(Node part, double x, double y, double width, double height) {}

    private List<Spot> spots(double inner) {
        int columns = Math.max(1, Math.min(most, (int) Math.floor((inner + gap) / (least + gap))));
        double width = Math.floor((inner - gap * (columns - 1)) / columns);
        double[] bottoms = new double[columns];
        List<Spot> spots = new ArrayList<>();
        for (Node part : getManagedChildren()) {
            int column = 0;
            for (int i = 1; i < columns; i++) {
                column = bottoms[i] < bottoms[column] ? i : column;
            }
            double height = height(part, width);
            spots.add(new Spot(part, column * (width + gap), bottoms[column], width, height));
            bottoms[column] += height + gap;
        }
        return spots;
    }

    @Override
    protected double computePrefWidth(double height) {
        return most * least + (most - 1) * gap + getInsets().getLeft() + getInsets().getRight();
    }

    @Override
    double heightAt(double width) {
        Insets insets = getInsets();
        double inner = (width < 0 ? computePrefWidth(-1) : width) - insets.getLeft() - insets.getRight();
        return insets.getTop() + insets.getBottom()
                + spots(inner).stream().mapToDouble(spot -> spot.y() + spot.height()).max().orElse(0);
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
