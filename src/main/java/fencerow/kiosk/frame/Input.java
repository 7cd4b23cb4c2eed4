package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Styles;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;

/** Sees every touch and key before the screen does. */
record Input(Runnable touched, Strikes strikes, Furniture furniture, Overlays overlays) {
    void watch(InputEvent event, Pane root, Scale scale) {
        if (event instanceof MouseEvent mouse) {
            strikes.filter(mouse, scale.pixelsPerMillimetre());
        }
        if (event.getEventType() == MouseEvent.MOUSE_PRESSED) {
            touched.run();
            root.getStyleClass().remove(Styles.BY_KEYS);
        } else if (event instanceof KeyEvent key && key.getEventType() == KeyEvent.KEY_PRESSED) {
            touched.run();
            List<Node> above = overlays.covers();
            Keys.pressed(key, root.getScene(), above.isEmpty() ? furniture.layers() : above,
                    above.isEmpty() ? furniture.content() : above.get(0));
        }
    }
}
