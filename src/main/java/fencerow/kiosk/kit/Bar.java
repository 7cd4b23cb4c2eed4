package fencerow.kiosk.kit;

import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** A bar of its own height, as wide as there is room, of parts that the theme colors. */
abstract class Bar extends Pane {
    /** In whole pixels. */
    final double height;

    /**
     * Without any part yet.
     *
     * @param millimetres its height
     * @param style       its style class
     * @param name        what it shows in words, for assistive tools
     */
    Bar(Scale scale, double millimetres, String style, String name) {
        this.height = Math.round(scale.px(millimetres));
        getStyleClass().add(style);
        setAccessibleText(name);
    }

    static Region part(String style) {
        Region region = new Region();
        region.getStyleClass().add(style);
        return region;
    }

    @Override
    protected double computePrefHeight(double width) {
        return height;
    }

    @Override
    protected double computeMinHeight(double width) {
        return height;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 0;
    }
}
