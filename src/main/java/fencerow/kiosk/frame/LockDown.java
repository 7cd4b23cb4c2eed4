package fencerow.kiosk.frame;

import javafx.event.Event;
import javafx.scene.Parent;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.DragEvent;
import javafx.scene.input.RotateEvent;
import javafx.scene.input.SwipeEvent;
import javafx.scene.input.ZoomEvent;

/** Takes away what a platform offers and a kiosk must not: menus, things dropped in, gestures. */
final class LockDown {
    private LockDown() {}

    static void on(Parent root) {
        root.addEventFilter(ContextMenuEvent.ANY, Event::consume);
        root.addEventFilter(DragEvent.ANY, Event::consume);
        root.addEventFilter(ZoomEvent.ANY, Event::consume);
        root.addEventFilter(RotateEvent.ANY, Event::consume);
        root.addEventFilter(SwipeEvent.ANY, Event::consume);
    }
}
