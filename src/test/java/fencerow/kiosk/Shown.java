package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.StaffLock;
import fencerow.kiosk.frame.BackRoom;
import fencerow.kiosk.frame.Doors;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Speaker;
import fencerow.kiosk.kit.Touch;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleAction;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;

/** A kiosk in a scene of its own, whose work is done in place and whose clock is moved by hand. */
public record Shown(Frame frame, Scene scene, HandClock clock) {
    /** The kiosk as passers-by see it. Called on JavaFX's thread, as is all else. */
    public static Shown of(Premises premises, int width, int height) {
        return of(premises, width, height, BackRoom.inPlace());
    }

    /** The same with its work done elsewhere. */
    public static Shown of(Premises premises, int width, int height, BackRoom backRoom) {
        return of(premises, width, height, backRoom, Speaker.NONE);
    }

    /** The same with a voice. */
    public static Shown of(Premises premises, int width, int height, BackRoom backRoom, Speaker speaker) {
        Scene scene = new Scene(new Group(), width, height);
        HandClock clock = new HandClock();
        Doors doors = new Doors(() -> {}, () -> {}, () -> {}, new StaffLock(clock));
        Frame frame = new Frame(premises, Screens::make, backRoom, clock, doors, speaker);
        frame.show(scene);
        return new Shown(frame, scene, clock);
    }

    /** Lays the scene out, twice: what one layout shows may change what the next one measures. */
    public void layOut() {
        for (int i = 0; i < 2; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
    }

    /** Touches what is called so; the last of several, which lies on top. */
    public void touch(String name) {
        List<Touch> found = touches().stream().filter(each -> name.equals(each.getAccessibleText())).toList();
        if (found.isEmpty()) {
            throw new AssertionError("nothing here is called [" + name + "], only "
                    + touches().stream().map(Node::getAccessibleText).toList());
        }
        found.get(found.size() - 1).executeAccessibleAction(AccessibleAction.FIRE);
    }

    /** Touches what is called something that begins so; the first of several. */
    public void touchBeginning(String words) {
        touch(touches().stream()
                .map(Node::getAccessibleText)
                .filter(name -> name.startsWith(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing begins with [" + words + "], only "
                        + touches().stream().map(Node::getAccessibleText).toList())));
    }

    /** All words on the screen, laid out, a label to a line. */
    public String words() {
        layOut();
        List<String> all = new ArrayList<>();
        collectWords(scene.getRoot(), all);
        return String.join("\n", all);
    }

    private static void collectWords(Node node, List<String> all) {
        if (node instanceof Labeled label) {
            all.add(label.getText());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collectWords(child, all));
        }
    }

    /** Fails where the words are not on the screen. */
    public void says(String words) {
        String all = words();
        assertTrue(all.contains(words), () -> "[" + words + "] is not on the screen, only:\n" + all);
    }

    /** Everything that can be touched. */
    public List<Touch> touches() {
        List<Touch> all = new ArrayList<>();
        collect(scene.getRoot(), all);
        return all;
    }

    private static void collect(Node node, List<Touch> all) {
        if (node.isVisible()) {
            if (node instanceof Touch touch) {
                all.add(touch);
            }
            if (node instanceof Parent parent) {
                parent.getChildrenUnmodifiable().forEach(child -> collect(child, all));
            }
        }
    }
}
