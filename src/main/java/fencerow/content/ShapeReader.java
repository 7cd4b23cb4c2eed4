package fencerow.content;

import fencerow.explainers.Outline;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the shapes of SVG into outlines. */
final class ShapeReader {
    /** The attributes of each shape, besides class and stroke-width. */
    static final Map<String, Set<String>> SHAPES = Map.of(
            "path", Set.of("d"),
            "rect", Set.of("x", "y", "width", "height", "rx", "ry"),
            "circle", Set.of("cx", "cy", "r"),
            "ellipse", Set.of("cx", "cy", "rx", "ry"),
            "line", Set.of("x1", "y1", "x2", "y2"),
            "polyline", Set.of("points"),
            "polygon", Set.of("points"));

    private final String name;
    private final Map<String, String> attributes;

    private ShapeReader(String name, Map<String, String> attributes) {
        this.name = name;
        this.attributes = attributes;
    }

    /** @throws IllegalArgumentException if an attribute is missing or wrong */
    static Outline read(String name, Map<String, String> attributes) {
        return new ShapeReader(name, attributes).read();
    }

    private Outline read() {
        return switch (name) {
            case "path" -> PathReader.read(text("d"));
            case "rect" -> rect();
            case "circle" -> new Pen().ellipse(number("cx", 0), number("cy", 0), size("r"), size("r")).outline();
            case "ellipse" -> new Pen().ellipse(number("cx", 0), number("cy", 0), size("rx"), size("ry")).outline();
            case "line" -> new Pen().move(number("x1", 0), number("y1", 0)).line(number("x2", 0), number("y2", 0))
                    .outline();
            case "polyline" -> points(false);
            default -> points(true);
        };
    }

    private Outline rect() {
        double width = size("width");
        double height = size("height");
        Optional<Double> rx = find("rx");
        Optional<Double> ry = find("ry");
        return new Pen().box(
                number("x", 0), number("y", 0), width, height,
                Math.min(rx.or(() -> ry).orElse(0.0), width / 2),
                Math.min(ry.or(() -> rx).orElse(0.0), height / 2)).outline();
    }

    private Outline points(boolean closed) {
        NumberScanner scanner = new NumberScanner(text("points"));
        Pen pen = new Pen().move(scanner.number(), scanner.number());
        while (!scanner.atEnd()) {
            pen.line(scanner.number(), scanner.number());
        }
        return (closed ? pen.close() : pen).outline();
    }

    private String text(String attribute) {
        String text = attributes.get(attribute);
        if (text == null) {
            throw new IllegalArgumentException("<" + name + "> has no [" + attribute + "]; add it");
        }
        return text;
    }

    private Optional<Double> find(String attribute) {
        return Optional.ofNullable(attributes.get(attribute)).map(text -> number(attribute, text));
    }

    private double number(String attribute, double usual) {
        return find(attribute).orElse(usual);
    }

    private double size(String attribute) {
        double size = number(attribute, text(attribute));
        if (!(size > 0)) {
            throw new IllegalArgumentException("[" + attribute + "] of <" + name + "> is " + size
                    + "; write a number above 0");
        }
        return size;
    }

    static double number(String attribute, String text) {
        NumberScanner scanner = new NumberScanner(text);
        double number = scanner.number();
        if (!scanner.atEnd()) {
            throw new IllegalArgumentException(
                    "[" + attribute + "] is [" + text + "]; write one number without a unit");
        }
        return number;
    }
}
