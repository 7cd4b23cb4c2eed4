package fencerow.kiosk.kit;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Scale;

/**
 * A drawing on screen: as large as fits, in its own proportions, in the middle. Its parts can be lit up, and touched: a
 * finger near a small part means that part, see {@link Drawing#partAt}. Answers when the finger is lifted where it was
 * put down; sliding off, or dragging the page, calls the touch off.
 */
public final class DrawingPane extends Region implements Held {
    private static final PseudoClass ARMED = PseudoClass.getPseudoClass(Styles.ARMED);

    private final Drawing drawing;
    private final DrawnShapes shapes;
    private final Group canvas;
    private final Scale scale = new Scale();
    private Map<String, PartMark> marks = Map.of();
    private Optional<String> armed = Optional.empty();
    private Consumer<String> touched = part -> {};
    private double least;

    /**
     * A drawing that is only looked at.
     *
     * @param drawing     itself
     * @param alternative what it shows, for whoever cannot see it
     */
    public DrawingPane(Drawing drawing, String alternative) {
        this.drawing = drawing;
        this.shapes = new DrawnShapes(drawing.pieces());
        Bounds frame = drawing.frame();
        Group inFrame = shapes.all();
        inFrame.setClip(new Rectangle(frame.x(), frame.y(), frame.width(), frame.height()));
        this.canvas = new Group(inFrame);
        canvas.getTransforms().setAll(scale);
        canvas.setManaged(false);
        canvas.setMouseTransparent(true);
        getStyleClass().add(Styles.DRAWING);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(alternative);
        setMouseTransparent(true);
        getChildren().setAll(canvas);
        addEventHandler(MouseEvent.ANY, this::mouse);
    }

    /**
     * Makes parts touchable.
     *
     * @param names       what each part that can be touched is called
     * @param least       how thick a thing must be to be hit with ease, in pixels; smaller ones reach that much wider
     * @param whenTouched is told the part's id
     * @return this
     */
    public DrawingPane touchable(Map<String, String> names, double least, Consumer<String> whenTouched) {
        this.least = least;
        this.touched = part -> {
            if (names.containsKey(part)) {
                whenTouched.accept(part);
            }
        };
        setMouseTransparent(false);
        shapes.parts().forEach((part, drawn) -> {
            String name = names.get(part);
            if (name != null) {
                drawn.touchable(name, () -> touched.accept(part));
            }
        });
        return this;
    }

    /** Picks parts out; those that are not named look as drawn. What lies in a part is marked with it. */
    public void mark(Map<String, PartMark> newMarks) {
        marks = Map.copyOf(newMarks);
        paint();
    }

    /** Lights parts up. */
    public void light(List<String> parts) {
        mark(parts.stream().distinct().collect(Collectors.toMap(part -> part, part -> PartMark.LIT)));
    }

    /** The part that a finger at the point means, in this pane's pixels. */
    public Optional<String> partAt(double x, double y) {
        double size = scale.getX();
        if (size <= 0) {
            return Optional.empty();
        }
        Bounds frame = drawing.frame();
        return drawing.partAt(
                frame.x() + (x - left()) / size, frame.y() + (y - top()) / size, least / size);
    }

    @Override
    public void letGo() {
        arm(Optional.empty());
    }

    private void mouse(MouseEvent event) {
        if (event.getEventType() == MouseEvent.MOUSE_PRESSED && event.getButton() == MouseButton.PRIMARY) {
            arm(partAt(event.getX(), event.getY()));
            event.consume();
        } else if (event.getEventType() == MouseEvent.MOUSE_DRAGGED && armed.isPresent()
                && !partAt(event.getX(), event.getY()).equals(armed)) {
            letGo();
        } else if (event.getEventType() == MouseEvent.MOUSE_RELEASED && event.getButton() == MouseButton.PRIMARY) {
            Optional<String> meant = armed;
            letGo();
            event.consume();
            meant.ifPresent(touched);
        }
    }

    private void arm(Optional<String> part) {
        armed = part;
        paint();
    }

    /** Gives each shape the state of the innermost part around it that has one. */
    private void paint() {
        shapes.shapes().forEach((shape, within) -> {
            Optional<PartMark> mark = within.stream()
                    .filter(marks::containsKey)
                    .findFirst()
                    .flatMap(part -> Optional.ofNullable(marks.get(part)));
            for (PartMark each : PartMark.values()) {
                shape.pseudoClassStateChanged(each.pseudoClass(), mark.filter(each::equals).isPresent());
            }
            shape.pseudoClassStateChanged(ARMED, armed.filter(within::contains).isPresent());
        });
    }

    private double left() {
        return snapPositionX((getWidth() - scale.getX() * drawing.frame().width()) / 2);
    }

    private double top() {
        return snapPositionY((getHeight() - scale.getY() * drawing.frame().height()) / 2);
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
    protected double computeMinHeight(double width) {
        return width < 0 ? 0 : computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return drawing.frame().width();
    }

    @Override
    protected double computePrefHeight(double width) {
        double across = width < 0 ? computePrefWidth(-1) : width;
        return Math.ceil(across * drawing.frame().height() / drawing.frame().width());
    }

    @Override
    protected void layoutChildren() {
        Bounds frame = drawing.frame();
        double size = Math.min(getWidth() / frame.width(), getHeight() / frame.height());
        scale.setX(size);
        scale.setY(size);
        canvas.setLayoutX(left() - size * frame.x());
        canvas.setLayoutY(top() - size * frame.y());
    }
}
