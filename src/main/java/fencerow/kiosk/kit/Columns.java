package fencerow.kiosk.kit;

import java.util.Collection;
import javafx.geometry.Insets;
import javafx.scene.Node;

/** Equal columns, as many as fit; the parts of a row are all as high as the highest. */
public final class Columns extends WidthFirst {
    private static final double GAP = 5;
    private static final double NEAR_GAP = 3;

    private final double least;
    private final Scale scale;
    private double gap;
    private final int most;

    /**
     * Arranges parts.
     *
     * @param scale of the panel
     * @param ems   the least width of a column, in ems
     * @param most  columns
     */
    public Columns(Scale scale, double ems, int most, Collection<? extends Node> parts) {
        this.least = ems * scale.em();
        this.scale = scale;
        this.gap = scale.whole(GAP);
        this.most = most;
        getChildren().setAll(parts);
    }

    /** Puts the parts as close to each other as what is touched may be. @return this */
    public Columns near() {
        gap = scale.whole(NEAR_GAP);
        return this;
    }

    /** How many columns fit into the width; fewer where that takes no more rows, so that no part stands alone. */
    private int columns(double width) {
        int fit = Math.max(1, Math.min(most, (int) Math.floor((width + gap) / (least + gap))));
        int rows = rows(fit);
        return rows > 1 ? (getManagedChildren().size() + rows - 1) / rows : fit;
    }

    private double columnWidth(double width) {
        int columns = columns(width);
        return Math.floor((width - gap * (columns - 1)) / columns);
    }

    private double rowHeight(int row, int columns, double columnWidth) {
        return getManagedChildren().stream()
                .skip((long) row * columns)
                .limit(columns)
                .mapToDouble(part -> height(part, columnWidth))
                .max()
                .orElse(0);
    }

    private int rows(int columns) {
        return (getManagedChildren().size() + columns - 1) / columns;
    }

    @Override
    protected double computePrefWidth(double height) {
        Insets insets = getInsets();
        return most * least + (most - 1) * gap + insets.getLeft() + insets.getRight();
    }

    @Override
    double heightAt(double width) {
        Insets insets = getInsets();
        double inner = (width < 0 ? computePrefWidth(-1) : width) - insets.getLeft() - insets.getRight();
        int columns = columns(inner);
        double height = insets.getTop() + insets.getBottom();
        for (int row = 0; row < rows(columns); row++) {
            height += rowHeight(row, columns, columnWidth(inner)) + (row == 0 ? 0 : gap);
        }
        return height;
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        double inner = getWidth() - insets.getLeft() - insets.getRight();
        int columns = columns(inner);
        double width = columnWidth(inner);
        double y = insets.getTop();
        for (int row = 0; row < rows(columns); row++) {
            double height = rowHeight(row, columns, width);
            for (int column = 0; column < columns; column++) {
                int index = row * columns + column;
                if (index < getManagedChildren().size()) {
                    Node part = getManagedChildren().get(index);
                    part.resizeRelocate(insets.getLeft() + column * (width + gap), y, width, height);
                }
            }
            y += height + gap;
        }
    }
}
