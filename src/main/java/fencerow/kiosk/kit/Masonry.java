package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import javafx.scene.Node;

/** Equal columns, as many as fit; each part is as high as it needs and goes where the least stands so far. */
public final class Masonry extends SpotPane {
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

    @Override
    List<Spot> spots(double inner) {
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
    double fullWidth() {
        return most * least + (most - 1) * gap;
    }
}
