package fencerow.explainers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A drawing as a value: outlines, how they look, and which of them make up a named part. Knows nothing of how or where
 * it is painted.
 *
 * @param frame       what is shown of the plane it is drawn on; sets its proportions
 * @param title       what it is, for the person who keeps the file; what shoppers hear is in the words of a language
 * @param description more of that; may be empty
 * @param pieces      in drawing order: later ones cover earlier ones
 */
public record Drawing(Bounds frame, String title, String description, List<Piece> pieces) {
    /** Copies the pieces. @throws IllegalArgumentException if the frame is empty */
    public Drawing {
        pieces = List.copyOf(pieces);
        if (frame.width() == 0 || frame.height() == 0) {
            throw new IllegalArgumentException("the frame " + frame + " is empty; give it a width and a height");
        }
    }

    /** A shape with the parts it belongs to, the outermost first. */
    private record Placed(Piece.Shape shape, List<String> within) {}

    /** What is drawn, without the width of lines and without labels; the frame's corner if that is nothing. */
    public Bounds bounds() {
        return bounds(placed()).orElse(new Bounds(frame.x(), frame.y(), 0, 0));
    }

    /** What is drawn of the part, without the width of lines; empty if there is no such part or it is empty. */
    public Optional<Bounds> boundsOf(String part) {
        return bounds(placed(part));
    }

    private static Optional<Bounds> bounds(List<Placed> shapes) {
        return shapes.stream().map(each -> each.shape().outline().bounds()).reduce(Bounds::and);
    }

    /** Ids of its parts, in drawing order, a part before the parts in it. */
    public Set<String> parts() {
        Set<String> ids = new LinkedHashSet<>();
        addParts(pieces, ids);
        return ids;
    }

    private static void addParts(List<Piece> pieces, Set<String> ids) {
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Part part) {
                ids.add(part.id());
                addParts(part.pieces(), ids);
            }
        }
    }

    /**
     * The part a finger at the point means: the part seen there, or one close by that is too small to be hit. A shape
     * of a part reaches beyond its outline as far as it is thinner than {@code least}; of several parts met the one
     * with the least to be seen is meant. Where another thing covers a part, it is not met.
     *
     * @param x     in the drawing's units
     * @param y     in the drawing's units
     * @param least how thick a thing must be to be hit with ease, in the drawing's units
     */
    public Optional<String> partAt(double x, double y, double least) {
        List<Placed> all = placed();
        Optional<String> seen = seenAt(all, x, y);
        return parts().stream()
                .filter(id -> isMet(placed(id), seen.filter(id::equals).isPresent(), x, y, least))
                .min(Comparator.comparingDouble(this::area));
    }

    private static boolean isMet(List<Placed> shapes, boolean seen, double x, double y, double least) {
        return seen || shapes.stream().noneMatch(each -> each.shape().distance(x, y) == 0)
                && shapes.stream().anyMatch(each ->
                        each.shape().distance(x, y) <= (least - each.shape().thickness()) / 2);
    }

    private double area(String part) {
        return placed(part).stream().mapToDouble(each -> each.shape().area()).sum();
    }

    /** The innermost part of what lies on top at the point. */
    private static Optional<String> seenAt(List<Placed> all, double x, double y) {
        for (int i = all.size() - 1; i >= 0; i--) {
            Placed each = all.get(i);
            if (each.shape().distance(x, y) == 0) {
                List<String> within = each.within();
                return within.isEmpty() ? Optional.empty() : Optional.of(within.get(within.size() - 1));
            }
        }
        return Optional.empty();
    }

    private List<Placed> placed() {
        List<Placed> all = new ArrayList<>();
        place(pieces, List.of(), all);
        return all;
    }

    private List<Placed> placed(String part) {
        return placed().stream().filter(each -> each.within().contains(part)).toList();
    }

    private static void place(List<Piece> pieces, List<String> within, List<Placed> all) {
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Shape shape) {
                all.add(new Placed(shape, within));
            } else if (piece instanceof Piece.Part part) {
                List<String> deeper = new ArrayList<>(within);
                deeper.add(part.id());
                place(part.pieces(), List.copyOf(deeper), all);
            }
        }
    }
}
