package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import javafx.scene.Node;

/**
 * One thing of several candidates beside each other: what it is, then how it stands on each, in columns of their own.
 * All are as high as the highest. Where the line is too short the name goes above the columns, and where it is shorter
 * still the columns become lines.
 */
public final class ComparisonRow extends SpotPane {
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
        this.gap = scale.whole(GAP);
        this.lineGap = scale.whole(LINE_GAP);
        getStyleClass().add("comparison-row");
        getChildren().add(name);
        getChildren().addAll(this.cells);
    }

    private boolean fits(int columns, double inner) {
        return inner >= columns * least + (columns - 1) * gap;
    }

    @Override
    List<Spot> spots(double inner) {
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
        double high = parts.stream().mapToDouble(part -> height(part, width)).max().orElse(0);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            spots.add(new Spot(parts.get(i), i * (width + gap), y, width, high));
        }
        return spots;
    }

    @Override
    double fullWidth() {
        return (cells.size() + 1) * least + cells.size() * gap;
    }
}
