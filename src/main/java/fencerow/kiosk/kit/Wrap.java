package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.scene.Node;

/** Parts beside each other at their own widths, in as many rows as they need; none is wider than the whole. */
public final class Wrap extends WidthFirst {
    private static final double GAP = 4;

    private final double gap;
    private boolean oneRow;
    private boolean apart;

    /** Arranges parts, from the left. */
    public Wrap(Scale scale, Collection<? extends Node> parts) {
        this.gap = scale.whole(GAP);
        getStyleClass().add("wrap");
        getChildren().setAll(parts);
    }

    /** Only the first row is shown: what does not fit on it is left out. */
    public Wrap oneRow() {
        oneRow = true;
        return this;
    }

    /**
     * The first part stands at the left end, all others at the right: in one row with it, or in one of their own, or
     * else in as many as it takes.
     */
    public Wrap apart() {
        apart = true;
        return this;
    }

    private List<Row> shown(double inner) {
        List<Row> rows = rows(inner);
        return oneRow && !rows.isEmpty() ? rows.subList(0, 1) : rows;
    }

    private record Row(List<Node> parts, List<Double> widths, double height) {}

    private List<Row> rows(double inner) {
        List<Row> rows = new ArrayList<>();
        List<Node> parts = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        double x = 0;
        boolean firstAlone = apart && computePrefWidth(-1) - getInsets().getLeft() - getInsets().getRight() > inner
                && othersWidth() <= inner;
        for (Node part : getManagedChildren()) {
            double width = Math.min(width(part), inner);
            if (!parts.isEmpty() && (x + width > inner || firstAlone && rows.isEmpty())) {
                rows.add(row(parts, widths));
                parts = new ArrayList<>();
                widths = new ArrayList<>();
                x = 0;
            }
            parts.add(part);
            widths.add(width);
            x += width + gap;
        }
        if (!parts.isEmpty()) {
            rows.add(row(parts, widths));
        }
        return rows;
    }

    private double othersWidth() {
        return getManagedChildren().stream().skip(1).mapToDouble(part -> width(part) + gap).sum() - gap;
    }

    private static Row row(List<Node> parts, List<Double> widths) {
        double height = 0;
        for (int i = 0; i < parts.size(); i++) {
            height = Math.max(height, height(parts.get(i), widths.get(i)));
        }
        return new Row(parts, widths, height);
    }

    @Override
    protected double computePrefWidth(double height) {
        Insets insets = getInsets();
        double width = insets.getLeft() + insets.getRight() - gap;
        for (Node part : getManagedChildren()) {
            width += width(part) + gap;
        }
        return Math.max(0, width);
    }

    @Override
    double heightAt(double width) {
        Insets insets = getInsets();
        double inner = width < 0 ? Double.MAX_VALUE : width - insets.getLeft() - insets.getRight();
        double height = insets.getTop() + insets.getBottom() - gap;
        for (Row row : shown(inner)) {
            height += row.height() + gap;
        }
        return Math.max(0, height);
    }

    /** What a row leaves of the width. */
    private double left(Row row) {
        double taken = row.widths().stream().mapToDouble(Double::doubleValue).sum() + gap * (row.parts().size() - 1);
        return Math.max(0, getWidth() - getInsets().getLeft() - getInsets().getRight() - taken);
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        List<Row> rows = shown(getWidth() - insets.getLeft() - insets.getRight());
        Set<Node> placed = rows.stream().flatMap(row -> row.parts().stream()).collect(Collectors.toSet());
        getManagedChildren().forEach(part -> part.setVisible(placed.contains(part)));
        double whole = rows.stream().mapToDouble(Row::height).sum() + gap * Math.max(0, rows.size() - 1);
        double room = getHeight() - insets.getTop() - insets.getBottom();
        double y = insets.getTop() + Math.max(0, Math.rint((room - whole) / 2));
        for (Row row : rows) {
            double x = insets.getLeft() + (apart && !row.equals(rows.get(0)) ? left(row) : 0);
            for (int i = 0; i < row.parts().size(); i++) {
                x += apart && i == 1 && row.equals(rows.get(0)) ? left(row) : 0;
                row.parts().get(i).resizeRelocate(x, y, row.widths().get(i), row.height());
                x += row.widths().get(i) + gap;
            }
            y += row.height() + gap;
        }
    }
}
