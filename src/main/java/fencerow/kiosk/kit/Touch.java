package fencerow.kiosk.kit;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.css.CssMetaData;
import javafx.css.PseudoClass;
import javafx.css.SimpleStyleableDoubleProperty;
import javafx.css.Styleable;
import javafx.css.StyleableDoubleProperty;
import javafx.css.StyleableProperty;
import javafx.css.converter.SizeConverter;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;

/**
 * A part of the screen that can be touched; what everything touchable is made of. It answers when the finger is lifted
 * inside it, never when it is put down; sliding off, or dragging the page, calls the touch off. Any content, however
 * its words wrap. Keys: Enter and Space.
 */
public class Touch extends StackPane implements Held {
    private static final PseudoClass ARMED = PseudoClass.getPseudoClass(Styles.ARMED);
    private static final PseudoClass SELECTED = PseudoClass.getPseudoClass(Styles.SELECTED);

    private static final CssMetaData<Touch, Number> LEAST_WIDTH = floor("-least-width", touch -> touch.leastWidth);
    private static final CssMetaData<Touch, Number> LEAST_HEIGHT = floor("-least-height", touch -> touch.leastHeight);
    private static final List<CssMetaData<? extends Styleable, ?>> STYLEABLE =
            Stream.concat(getClassCssMetaData().stream(), Stream.of(LEAST_WIDTH, LEAST_HEIGHT)).toList();

    private final StyleableDoubleProperty leastWidth =
            new SimpleStyleableDoubleProperty(LEAST_WIDTH, this, "least width");
    private final StyleableDoubleProperty leastHeight =
            new SimpleStyleableDoubleProperty(LEAST_HEIGHT, this, "least height");
    private final Heights heights = new Heights();
    private final Runnable action;
    private boolean down;
    private boolean selected;

    /**
     * Makes content touchable.
     *
     * @param name    what it is called by assistive tools; begins with the words shown on it
     * @param content shown on it
     * @param action  what a touch does
     */
    public Touch(String name, Node content, Runnable action) {
        super(content);
        this.action = action;
        getStyleClass().add(Styles.TOUCH);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(name);
        setFocusTraversable(true);
        content.setMouseTransparent(true);
        addEventHandler(MouseEvent.ANY, this::mouse);
        addEventHandler(KeyEvent.ANY, this::key);
        disabledProperty().addListener((property, was, is) -> letGo());
        focusedProperty().addListener((property, was, is) -> letGo());
    }

    private static CssMetaData<Touch, Number> floor(
            String name, Function<Touch, StyleableProperty<Number>> property) {
        return new CssMetaData<>(name, SizeConverter.getInstance(), 0) {
            @Override
            public boolean isSettable(Touch touch) {
                return true;
            }

            @Override
            public StyleableProperty<Number> getStyleableProperty(Touch touch) {
                return property.apply(touch);
            }
        };
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return STYLEABLE;
    }

    // At least as large as the theme says, and never so small that its words are cut off.

    @Override
    protected double computeMinWidth(double height) {
        return leastWidth.get();
    }

    @Override
    protected double computePrefWidth(double height) {
        return Math.max(leastWidth.get(), super.computePrefWidth(height));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.max(leastHeight.get(), heights.at(width, super::computePrefHeight));
    }

    @Override
    public final void requestLayout() {
        if (heights != null) { // while the pane itself is made, there are none yet
            heights.forget();
        }
        super.requestLayout();
    }

    /** With style classes. */
    public Touch styled(String... classes) {
        getStyleClass().addAll(classes);
        return this;
    }

    /** Shows it as chosen or not; how that looks, in shape as well as colour, is the theme's and the content's part. */
    public final Touch select(boolean chosen) {
        selected = chosen;
        pseudoClassStateChanged(SELECTED, chosen);
        notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTED);
        return this;
    }

    /** Whether it is chosen. */
    public final boolean isSelected() {
        return selected;
    }

    @Override
    public final void letGo() {
        arm(false);
    }

    private void mouse(MouseEvent event) {
        if (event.getEventType() == MouseEvent.MOUSE_PRESSED && event.getButton() == MouseButton.PRIMARY) {
            arm(true);
            event.consume();
        } else if (event.getEventType() == MouseEvent.MOUSE_DRAGGED && !contains(event.getX(), event.getY())) {
            arm(false);
        } else if (event.getEventType() == MouseEvent.MOUSE_RELEASED && event.getButton() == MouseButton.PRIMARY) {
            boolean meant = down;
            arm(false);
            event.consume();
            if (meant) {
                action.run();
            }
        }
    }

    /** As with a finger: letting go does it, so that a key held down, which repeats, does it once. */
    private void key(KeyEvent event) {
        if (event.getCode() != KeyCode.ENTER && event.getCode() != KeyCode.SPACE) {
            return;
        }
        event.consume();
        if (event.getEventType() == KeyEvent.KEY_PRESSED) {
            arm(true);
        } else if (event.getEventType() == KeyEvent.KEY_RELEASED && down) {
            arm(false);
            action.run();
        }
    }

    private void arm(boolean armed) {
        down = armed;
        pseudoClassStateChanged(ARMED, armed);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.SELECTED
                ? Boolean.valueOf(selected)
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    @Override
    public void executeAccessibleAction(AccessibleAction asked, Object... parameters) {
        if (asked == AccessibleAction.FIRE) {
            action.run();
        } else {
            super.executeAccessibleAction(asked, parameters);
        }
    }
}
