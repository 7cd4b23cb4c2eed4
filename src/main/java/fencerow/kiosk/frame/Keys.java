package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Styles;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * The kiosk by a keypad or keyboard: Tab and the arrow keys lead from one thing that can be touched to the next, in
 * reading order and round again, never below what lies on top; Enter and Space touch. The page follows.
 */
final class Keys {
    private static final Set<KeyCode> ON = Set.of(KeyCode.TAB, KeyCode.DOWN, KeyCode.RIGHT);
    private static final Set<KeyCode> BACK = Set.of(KeyCode.UP, KeyCode.LEFT);

    private Keys() {}

    /**
     * Leads on, if the key asks for that.
     *
     * @param layers what can be reached, in reading order
     * @param first  the layer to begin in
     */
    static void pressed(KeyEvent event, Scene scene, List<Node> layers, Node first) {
        boolean back = BACK.contains(event.getCode()) || event.getCode() == KeyCode.TAB && event.isShiftDown();
        if (!back && !ON.contains(event.getCode())) {
            return;
        }
        event.consume();
        List<Node> stops = new ArrayList<>();
        layers.forEach(layer -> collect(layer, stops));
        if (stops.isEmpty()) {
            return;
        }
        int at = stops.indexOf(scene.getFocusOwner());
        int next = at < 0 ? start(stops, first) : Math.floorMod(at + (back ? -1 : 1), stops.size());
        scene.getRoot().getStyleClass().remove(Styles.BY_KEYS);
        scene.getRoot().getStyleClass().add(Styles.BY_KEYS);
        Node stop = stops.get(next);
        stop.requestFocus();
        for (Parent around = stop.getParent(); around != null; around = around.getParent()) {
            if (around instanceof Column column) {
                column.reveal(stop);
            }
        }
    }

    private static int start(List<Node> stops, Node first) {
        List<Node> preferred = new ArrayList<>();
        collect(first, preferred);
        return preferred.isEmpty() ? 0 : stops.indexOf(preferred.get(0));
    }

    private static void collect(Node node, List<Node> stops) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        if (node.isFocusTraversable()) {
            stops.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, stops));
        }
    }
}
