package fencerow.content;

import java.util.Comparator;

/**
 * Where something was written.
 *
 * @param file as a person would name it, such as {@code content/features.yaml}
 * @param line from 1
 */
public record Place(String file, int line) implements Comparable<Place> {
    private static final Comparator<Place> ORDER = Comparator.comparing(Place::file).thenComparingInt(Place::line);

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return file + ":" + line;
    }
}
