package fencerow.kiosk.work;

import fencerow.kiosk.kit.Sign;
import java.util.List;
import java.util.Optional;

/** A result drawn. All places are shares of the width from the left and of the height from the foot. */
sealed interface Picture {
    /** The same in words. */
    String alternative();

    /**
     * A curve with a width where the truth is a range.
     *
     * @param points from left to right
     * @param now    where the shopper's numbers lie, if within
     * @param loads  things to lift
     * @param across marks along the foot
     * @param up     marks along the left
     * @param name   what runs along the foot
     */
    record Curve(List<Point> points, Optional<Point> now, List<Load> loads, List<Tick> across, List<Tick> up,
            String name, String alternative) implements Picture {
        /** Copies the lists. */
        public Curve {
            points = List.copyOf(points);
            loads = List.copyOf(loads);
            across = List.copyOf(across);
            up = List.copyOf(up);
        }
    }

    /** What is true at {@code x}: from low to high. */
    record Point(double x, double low, double high) {}

    /** A mark on an axis. */
    record Tick(double at, String words) {}

    /** Something to lift, where its center lies and what it weighs; its words say whether it can be lifted. */
    record Load(Point at, Sign.Kind sign, String words) {}

    /** Loads on the two axles, below a tractor. */
    record Axles(Bar front, Bar rear, String note, String alternative) implements Picture {}

    /**
     * What stands on an axle.
     *
     * @param share of the longest bar
     * @param least share that must stand there for steering or grip, where that is known
     */
    record Bar(String name, String amount, double share, Optional<Double> least) {}
}
