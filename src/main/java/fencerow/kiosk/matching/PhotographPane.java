package fencerow.kiosk.matching;

import fencerow.kiosk.kit.Scale;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/** The place of a unit's photograph on a card: it has its size before that is there, so that nothing moves. */
final class PhotographPane extends Pane {
    private static final double WIDTH_EMS = 8;
    private static final double HEIGHT_EMS = 5;

    private final double width;
    private final double height;

    PhotographPane(Scale scale) {
        this.width = Math.floor(WIDTH_EMS * scale.em());
        this.height = Math.floor(HEIGHT_EMS * scale.em());
        setMinSize(width, height);
        setMaxSize(width, height);
    }

    /** Shows it; where the file is damaged, its place stays empty. */
    void show(Photograph photograph, String words) {
        photograph.findView(width, height).ifPresent(view -> {
            view.setAccessibleText(words);
            getChildren().setAll(view);
        });
    }

    /** How many dots across and down it takes. */
    static double dots(Scale scale) {
        return Math.ceil(WIDTH_EMS * scale.em());
    }

    @Override
    protected double computePrefWidth(double given) {
        return width;
    }

    @Override
    protected double computePrefHeight(double given) {
        return height;
    }

    @Override
    protected void layoutChildren() {
        for (Node view : getManagedChildren()) {
            layoutInArea(view, 0, 0, getWidth(), getHeight(), 0, HPos.RIGHT, VPos.TOP);
        }
    }
}
