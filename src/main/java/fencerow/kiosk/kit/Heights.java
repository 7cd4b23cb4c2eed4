package fencerow.kiosk.kit;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * How high something is at each width it was asked for, until it has to be laid out anew. JavaFX keeps only the height
 * that holds at any width; but a box asks its parts more than once, so that each level of boxes multiplies the asking.
 */
final class Heights {
    private final Map<Double, Double> known = new HashMap<>();

    /** The height at the width, measured if it is not known; below 0 is no width in particular. */
    double at(double width, DoubleUnaryOperator measure) {
        Double before = known.get(width);
        if (before != null) {
            return before;
        }
        double height = measure.applyAsDouble(width);
        known.put(width, height);
        return height;
    }

    /** Something has changed. */
    void forget() {
        known.clear();
    }
}
