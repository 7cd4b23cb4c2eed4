package fencerow.kiosk.kit;

import java.util.Collection;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Plain arrangements; distances come from the theme. */
public final class Boxes {
    private Boxes() {}

    /** One below the other, at the usual distance. */
    public static VBox stack(Node... parts) {
        VBox box = new Stack(parts);
        box.getStyleClass().add(Styles.STACK);
        box.setFillWidth(true);
        return box;
    }

    /** One below the other, at the usual distance. */
    public static VBox stack(Collection<? extends Node> parts) {
        return stack(parts.toArray(Node[]::new));
    }

    /** One below the other, close together: lines of one thing. */
    public static VBox tight(Node... parts) {
        VBox box = stack(parts);
        box.getStyleClass().add(Styles.TIGHT);
        return box;
    }

    /** One below the other, far apart: sections. */
    public static VBox loose(Node... parts) {
        VBox box = stack(parts);
        box.getStyleClass().add(Styles.LOOSE);
        return box;
    }

    /** A sheet of lighter paper with an edge. */
    public static VBox card(Node... parts) {
        VBox box = stack(parts);
        box.getStyleClass().add(Styles.CARD);
        return box;
    }

    /** Remembers how high it is at a width; what changes it, asks for a new layout. */
    private static final class Stack extends VBox {
        private final Heights least = new Heights();
        private final Heights preferred = new Heights();

        Stack(Node... parts) {
            getChildren().setAll(parts);
        }

        @Override
        public void requestLayout() {
            if (least != null && preferred != null) { // while the box itself is made, there are none yet
                least.forget();
                preferred.forget();
            }
            super.requestLayout();
        }

        @Override
        protected double computeMinHeight(double width) {
            return least.at(width, super::computeMinHeight);
        }

        @Override
        protected double computePrefHeight(double width) {
            return preferred.at(width, super::computePrefHeight);
        }
    }

    /** Beside each other, on one line. */
    public static HBox row(Node... parts) {
        HBox box = new HBox(parts);
        box.getStyleClass().add(Styles.ROW);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    /** The part of a row that takes up what is left. */
    public static <N extends Node> N growing(N part) {
        HBox.setHgrow(part, Priority.ALWAYS);
        VBox.setVgrow(part, Priority.ALWAYS);
        if (part instanceof Region region) {
            region.setMaxWidth(Double.MAX_VALUE);
        }
        return part;
    }

    /** Empty room that takes up what is left. */
    public static Region filler() {
        return growing(new Region());
    }

    /** A thin line across. */
    public static Region rule() {
        Region line = new Region();
        line.getStyleClass().add(Styles.RULE);
        return line;
    }
}
