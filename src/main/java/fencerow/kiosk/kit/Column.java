package fencerow.kiosk.kit;

import javafx.animation.Interpolator;
import javafx.animation.KeyFrame;
import javafx.animation.KeyValue;
import javafx.animation.Timeline;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.util.Duration;

/**
 * A column of content that may be longer than the screen. A finger drags it; two buttons beside it turn it page by
 * page, so that no gesture is needed. Touch screens of Linux give mouse events, so dragging is told from touching by
 * how far the finger moved: beyond the slop the touch underneath is called off.
 */
public final class Column extends Region {
    /** How far a finger may wander while it touches, in millimetres. */
    private static final double SLOP = 2.8;
    private static final double GUTTER = 15;
    private static final double GUTTER_GAP = 4;
    private static final double OVERLAP_EMS = 2.5;
    private static final Duration TURN = Duration.millis(180);

    private final Scale scale;
    private final Node content;
    private final Touch up;
    private final Touch down;
    private final Region track = new Region();
    private final Region thumb = new Region();
    private final Rectangle window = new Rectangle();
    private final DoubleProperty offset = new SimpleDoubleProperty();
    private final Pane clipped = new Pane();
    private final double wanted;
    private boolean opened;
    private double contentHeight;
    private double pressedAt;
    private double offsetAtPress;
    private boolean panning;
    private Timeline turning = new Timeline();

    /**
     * Holds content.
     *
     * @param position how far it is scrolled at first: 0 at the top, 1 at the end
     * @param upName   the name of the button that turns back
     * @param downName the name of the button that turns on
     */
    public Column(Scale scale, Node content, double position, String upName, String downName) {
        this.scale = scale;
        this.content = content;
        this.wanted = position;
        this.up = Buttons.icon(Icon.UP, upName, () -> turn(-1));
        this.down = Buttons.icon(Icon.DOWN, downName, () -> turn(1));
        getStyleClass().add(Styles.COLUMN);
        track.getStyleClass().add("track");
        thumb.getStyleClass().add("thumb");
        up.getStyleClass().add(Styles.GUTTER);
        down.getStyleClass().add(Styles.GUTTER);
        content.setManaged(false);
        clipped.getChildren().setAll(content);
        clipped.setClip(window);
        getChildren().setAll(clipped, track, thumb, up, down);
        offset.addListener((property, was, is) -> place());
        addEventFilter(MouseEvent.ANY, this::mouse);
        addEventHandler(ScrollEvent.SCROLL, event -> moveTo(offset.get() - event.getDeltaY()));
    }

    /** How far it is scrolled: 0 at the top, 1 at the end. */
    public double position() {
        return reach() <= 0 ? wanted : offset.get() / reach();
    }

    /** What it holds. */
    public Node content() {
        return content;
    }

    private double reach() {
        return Math.max(0, contentHeight - clipped.getHeight());
    }

    private void turn(int pages) {
        double page = Math.max(clipped.getHeight() / 2, clipped.getHeight() - OVERLAP_EMS * scale.em());
        glide(offset.get() + pages * page);
    }

    /** Scrolls so that a part of the content comes to the top. */
    public void show(Node part) {
        double y = content.sceneToLocal(part.localToScene(part.getLayoutBounds())).getMinY();
        glide(y);
    }

    /** Scrolls as little as brings a part of the content into sight. */
    public void reveal(Node part) {
        Bounds box = content.sceneToLocal(part.localToScene(part.getLayoutBounds()));
        double top = box.getMinY() - OVERLAP_EMS * scale.em() / 2;
        double bottom = box.getMaxY() + OVERLAP_EMS * scale.em() / 2;
        if (part != up && part != down && (top < offset.get() || bottom > offset.get() + clipped.getHeight())) {
            moveTo(top < offset.get() ? top : bottom - clipped.getHeight());
        }
    }

    private void glide(double goal) {
        turning.stop();
        turning = new Timeline(new KeyFrame(TURN, new KeyValue(offset, bounded(goal), Interpolator.EASE_OUT)));
        turning.play();
    }

    private double bounded(double value) {
        return Math.max(0, Math.min(reach(), value));
    }

    private void moveTo(double value) {
        turning.stop();
        offset.set(bounded(value));
    }

    private void place() {
        content.setLayoutY(-Math.rint(offset.get()));
        up.setDisable(offset.get() <= 0);
        down.setDisable(offset.get() >= reach() - 1);
        double room = track.getHeight();
        double length = Math.max(scale.px(4), room * clipped.getHeight() / Math.max(1, contentHeight));
        double y = track.getLayoutY() + (room - length) * (reach() <= 0 ? 0 : offset.get() / reach());
        thumb.resizeRelocate(track.getLayoutX(), y, track.getWidth(), length);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return content.prefWidth(-1);
    }

    @Override
    protected double computePrefHeight(double width) {
        Insets insets = getInsets();
        return heightAt(width < 0 ? -1 : width - insets.getLeft() - insets.getRight())
                + insets.getTop() + insets.getBottom();
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        Insets insets = getInsets();
        double width = getWidth() - insets.getLeft() - insets.getRight();
        double height = getHeight() - insets.getTop() - insets.getBottom();
        contentHeight = heightAt(width);
        boolean longer = contentHeight > height;
        double gutter = scale.whole(GUTTER);
        double inner = longer ? width - gutter - scale.whole(GUTTER_GAP) : width;
        contentHeight = longer ? heightAt(inner) : contentHeight;
        clipped.resizeRelocate(insets.getLeft(), insets.getTop(), inner, height);
        window.setWidth(inner);
        window.setHeight(height);
        content.resize(inner, contentHeight);
        for (Node part : new Node[] {up, down, track, thumb}) {
            part.setVisible(longer);
        }
        if (longer) {
            layoutGutter(insets.getLeft() + width - gutter, insets.getTop(), gutter, height);
        }
        double start = opened ? offset.get() : wanted * reach();
        opened |= height > 0;
        offset.set(bounded(start));
        place();
    }

    private double heightAt(double width) {
        return Math.ceil(Math.max(content.minHeight(width), content.prefHeight(width)));
    }

    private void layoutGutter(double x, double y, double width, double height) {
        up.resizeRelocate(x, y, width, width);
        down.resizeRelocate(x, y + height - width, width, width);
        double gap = scale.whole(GUTTER_GAP);
        double line = Math.max(1, Math.rint(scale.px(1)));
        track.resizeRelocate(Math.rint(x + width / 2 - line / 2), y + width + gap, line, height - 2 * (width + gap));
    }

    private void mouse(MouseEvent event) {
        if (event.getEventType() == MouseEvent.MOUSE_PRESSED) {
            turning.stop();
            pressedAt = event.getSceneY();
            offsetAtPress = offset.get();
            panning = false;
        } else if (event.getEventType() == MouseEvent.MOUSE_DRAGGED && reach() > 0) {
            double moved = event.getSceneY() - pressedAt;
            if (!panning && Math.abs(moved) > scale.px(SLOP)) {
                panning = true;
                callOff(event.getTarget());
            }
            if (panning) {
                moveTo(offsetAtPress - moved);
                event.consume();
            }
        } else if (event.getEventType() == MouseEvent.MOUSE_RELEASED && panning) {
            event.consume();
        } else if (event.getEventType() == MouseEvent.MOUSE_CLICKED && panning) {
            panning = false;
            event.consume();
        }
    }

    private static void callOff(Object target) {
        if (target instanceof Node node) {
            for (Node each = node; each != null; each = each.getParent()) {
                if (each instanceof Held held) {
                    held.letGo();
                }
            }
        }
    }
}
