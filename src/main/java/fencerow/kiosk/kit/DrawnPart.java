package fencerow.kiosk.kit;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A named part of a drawing on screen. Once it can be touched it answers keys and assistive tools as a button does. */
final class DrawnPart extends Group {
    private final String id;
    private Runnable action = () -> {};

    DrawnPart(String id) {
        this.id = id;
        getStyleClass().add("part");
        setAccessibleRole(AccessibleRole.NODE);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** The topic it is about. */
    String part() {
        return id;
    }

    /** Makes it a button. */
    void touchable(String name, Runnable whenTouched) {
        action = whenTouched;
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(name);
        setFocusTraversable(true);
    }

    private void key(KeyEvent event) {
        if (event.getTarget() == this && (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE)) {
            event.consume();
            action.run();
        }
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
