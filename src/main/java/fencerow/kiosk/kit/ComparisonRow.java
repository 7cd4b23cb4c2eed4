package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * One thing of several candidates beside each other: what it is, then how it stands on each, in columns of their own.
 * Where the line is too short the name goes above the columns, and where it is shorter still the columns become lines.
 */
public final class ComparisonRow extends Pane {
    private static final double GAP = 5;
    private static final double LINE_GAP = 1.5;

    private final Node name;
    private final List<Node> cells;
    private final double least;
    private final double gap;
    private final double lineGap;

    /**
     * Arranges the parts.
     *
     * @param ems   the least width of a column, in ems
     * @param cells one for each candidate
     */
    public ComparisonRow(Scale scale, double ems, Node name, Collection<? extends Node> cells) {
        this.name = name;
        this.cells = List.copyOf(cells);
        this.least = ems * scale.em();
        this.gap = scale.px(GAP);
        this.lineGap = scale.px(LINE_GAP);
        getStyleClass().add("comparison-row");
        getChildren().add(name);
        getChildren().addAll(this.cells);
    }

    private record Spot(Node part, double x, double y, double width, double height) {}

    private boolean fits(int columns, double inner) {
        return inner >= columns * least + (columns - 1) * gap;
    }

    private static double height(Node part, double width) {
        return Math.ceil(Math.max(part.minHeight(width), part.prefHeight(width)));
    }

    private List<Spot> spots(double inner) {
        int count = cells.size();
        if (fits(count + 1, inner)) {
            List<Node> all = new ArrayList<>(List.of(name));
            all.addAll(cells);
            return beside(all, inner, 0);
        }
        List<Spot> spots = new ArrayList<>();
        double high = height(name, inner);
        spots.add(new Spot(name, 0, 0, inner, high));
        if (fits(count, inner)) {
            spots.addAll(beside(cells, inner, high + lineGap));
            return spots;
        }
        double y = high + lineGap;
        for (Node cell : cells) {
            double cellHeight = height(cell, inner);
            spots.add(new Spot(cell, 0, y, inner, cellHeight));
            y += cellHeight + lineGap;
        }
        return spots;
    }

    private List<Spot> beside(List<Node> parts, double inner, double y) {
        double width = Math.floor((inner - gap * (parts.size() - 1)) / parts.size());
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Node part = parts.get(i);
            spots.add(new Spot(part, i * (width + gap), y, width, height(part, width)));
        }
        return spots;
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
        return (cells.size() + 1) * least + cells.size() * gap + insets.getLeft() + insets.getRight();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
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
