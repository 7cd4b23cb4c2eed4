package fencerow.kiosk;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/**
 * Everything that can be reached from an object: through all fields of our own classes (what they inherit from ours
 * included), the elements of collections and arrays, values that are observed, and the nodes of a scene with their
 * words and names. Fields of the platform's own classes are not open to reflection.
 */
final class Reachable {
    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> words = new HashSet<>();
    private final Deque<Object> open = new ArrayDeque<>();

    /** All strings on the way. */
    static Set<String> words(Object... roots) {
        Reachable reachable = new Reachable();
        for (Object root : roots) {
            reachable.add(root);
        }
        while (!reachable.open.isEmpty()) {
            reachable.follow(reachable.open.remove());
        }
        return reachable.words;
    }

    private void add(@Nullable Object object) {
        if (object instanceof CharSequence text) {
            words.add(text.toString());
        } else if (object != null && !(object instanceof Class) && !(object instanceof Enum) && seen.add(object)) {
            open.add(object);
        }
    }

    private void follow(Object object) {
        if (object instanceof Optional<?> optional) {
            optional.ifPresent(this::add);
        } else if (object instanceof Collection<?> collection) {
            collection.forEach(this::add);
        } else if (object instanceof Map<?, ?> map) {
            map.keySet().forEach(this::add);
            map.values().forEach(this::add);
        } else if (object instanceof ObservableValue<?> value) {
            add(value.getValue());
        } else if (object.getClass().isArray() && !object.getClass().getComponentType().isPrimitive()) {
            for (int i = 0; i < Array.getLength(object); i++) {
                add(Array.get(object, i));
            }
        }
        if (object instanceof Scene scene) {
            add(scene.getRoot());
        }
        if (object instanceof Node node) {
            followNode(node);
        }
        for (Class<?> type = object.getClass(); type != null; type = type.getSuperclass()) {
            if (type.getName().startsWith("fencerow.")) {
                followFields(object, type);
            }
        }
    }

    private void followNode(Node node) {
        add(node.getAccessibleText());
        add(node.getUserData());
        if (node instanceof Labeled labeled) {
            add(labeled.getText());
        } else if (node instanceof Text text) {
            add(text.getText());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(this::add);
        }
    }

    private void followFields(Object object, Class<?> type) {
        for (Field field : type.getDeclaredFields()) {
            if (!field.getType().isPrimitive() && (!Modifier.isStatic(field.getModifiers()) || !field.isSynthetic())) {
                try {
                    field.setAccessible(true);
                    add(field.get(object));
                } catch (IllegalAccessException e) {
                    throw new AssertionError(field + " cannot be read", e);
                }
            }
        }
    }
}
