package fencerow.content;

import fencerow.explainers.Affine;
import fencerow.explainers.Bounds;
import fencerow.explainers.Look.Tone;
import fencerow.explainers.Piece;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;
import org.xml.sax.helpers.LocatorImpl;

/** Takes a drawing's elements one after the other; reports each that is none of ours and leaves out what is in it. */
final class DrawingHandler extends DefaultHandler {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String STYLE_SHEET = "pictures.css";
    private static final int MOST_ELEMENTS = 3_000;
    private static final int DEEPEST = 20;
    private static final int LONGEST_LABEL = 12;
    private static final Set<String> GROUP = Set.of("id", "class", "stroke-width", "transform");
    private static final Set<String> LOOKS = Set.of("class", "stroke-width");
    private static final Set<String> TEXT = Set.of("x", "y", "font-size", "text-anchor", "class");

    private final SourceFile file;
    private final Problems problems;
    private final Deque<Open> open = new ArrayDeque<>();
    private final Map<String, Place> parts = new TreeMap<>();
    private final StringBuilder characters = new StringBuilder();
    private Locator locator;
    private Bounds frame = new Bounds(0, 0, 1, 1);
    private Piece.Part all = new Piece.Part("", List.of());
    private String title = "";
    private String description = "";
    private int elements;
    private int refusedDepth;

    /** An element that was opened and what it has come to hold. */
    private record Open(
            String name, Map<String, String> attributes, Affine transform, LookReader looks, List<Piece> pieces) {}

    DrawingHandler(SourceFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
        this.locator = new LocatorImpl();
    }

    Piece.Part all() {
        return all;
    }

    Bounds frame() {
        return frame;
    }

    String title() {
        return title;
    }

    String description() {
        return description;
    }

    Map<String, Place> parts() {
        return parts;
    }

    @Override
    public void setDocumentLocator(Locator given) {
        locator = given;
    }

    private Place here() {
        return file.at(locator.getLineNumber());
    }

    @Override
    public InputSource resolveEntity(String publicId, String systemId) {
        return new InputSource(new StringReader(""));
    }

    @Override
    public void processingInstruction(String target, String data) {
        if (!target.equals("xml-stylesheet") || !data.contains("href=\"" + STYLE_SHEET + "\"")) {
            problems.error(here(), "there is an instruction <?" + target + " ..?>",
                    "delete it; only " + STYLE_SHEET + " may be named so, for looking at the file in a browser");
        }
    }

    @Override
    public void startElement(String uri, String name, String qName, Attributes given) throws SAXException {
        if (++elements > MOST_ELEMENTS || open.size() + refusedDepth >= DEEPEST) {
            problems.error(here(), "there are more than " + MOST_ELEMENTS + " elements, or more than " + DEEPEST
                    + " inside each other", "simplify the drawing");
            throw new SAXException("too much to go on");
        }
        if (refusedDepth > 0) {
            refusedDepth++;
            return;
        }
        boolean root = open.isEmpty();
        Set<String> allowed = allowed(name);
        boolean known = uri.equals(SVG) && !allowed.equals(Set.of("?")) && root == name.equals("svg");
        if (!known || !root && !open.element().name().matches("svg|g")) {
            refuse(root, uri, qName);
            return;
        }
        Map<String, String> attributes = attributes(given, name, allowed);
        Open parent = root ? new Open("", Map.of(), Affine.NONE, LookReader.NOTHING, List.of()) : open.element();
        try {
            open.push(opened(name, attributes, parent));
        } catch (IllegalArgumentException e) {
            problems.error(here(), e);
            open.push(new Open(name, attributes, parent.transform(), parent.looks(), new ArrayList<>()));
        }
        characters.setLength(0);
    }

    private void refuse(boolean root, String uri, String qName) {
        refusedDepth = 1;
        if (root) {
            problems.error(here(), "the file starts with <" + qName + "> of [" + uri + "]",
                    "start it with <svg xmlns=\"" + SVG + "\" viewBox=\"..\">");
        } else {
            problems.error(here(), "<" + qName + "> inside <" + open.element().name() + "> is no part of our drawings",
                    "delete it, or draw it with g, text and " + new TreeSet<>(ShapeReader.SHAPES.keySet()));
        }
    }

    private static Set<String> allowed(String name) {
        if (ShapeReader.SHAPES.containsKey(name)) {
            Set<String> allowed = new TreeSet<>(LOOKS);
            allowed.addAll(ShapeReader.SHAPES.getOrDefault(name, Set.of()));
            return allowed;
        }
        return switch (name) {
            case "svg" -> Set.of("viewBox");
            case "g" -> GROUP;
            case "text" -> TEXT;
            case "title", "desc" -> Set.of();
            default -> Set.of("?");
        };
    }

    private Map<String, String> attributes(Attributes given, String name, Set<String> allowed) {
        Map<String, String> attributes = new TreeMap<>();
        for (int i = 0; i < given.getLength(); i++) {
            String attribute = given.getQName(i);
            if (allowed.contains(attribute)) {
                attributes.put(attribute, given.getValue(i));
            } else {
                problems.error(here(), "the attribute [" + attribute + "] of <" + name + "> is not read",
                        advice(attribute, allowed));
            }
        }
        return attributes;
    }

    private static String advice(String attribute, Set<String> allowed) {
        if (attribute.matches("style|fill|stroke|color|opacity|.*-opacity|stroke-.*")) {
            return "delete it; looks are classes: " + LookReader.known();
        }
        if (attribute.equals("id")) {
            return "delete it; ids name parts, so put the part in a <g id=\"..\">";
        }
        if (attribute.equals("transform")) {
            return "put the shape in a <g transform=\"..\">";
        }
        return Nearest.advice(attribute, allowed, "delete it");
    }

    private Open opened(String name, Map<String, String> attributes, Open parent) {
        LookReader looks = parent.looks();
        if (attributes.containsKey("class")) {
            looks = looks.with(attributes.getOrDefault("class", ""));
        }
        if (attributes.containsKey("stroke-width")) {
            looks = looks.withWidth(attributes.getOrDefault("stroke-width", ""));
        }
        Affine transform = parent.transform().after(TransformReader.read(attributes.getOrDefault("transform", "")));
        if (name.equals("svg")) {
            frame = frame(attributes);
        } else if (name.equals("g") && attributes.containsKey("id")) {
            declare(attributes.getOrDefault("id", ""));
        } else if (ShapeReader.SHAPES.containsKey(name)) {
            parent.pieces().add(new Piece.Shape(
                    ShapeReader.read(name, attributes).mapped(transform), looks.look(transform.size())));
        }
        return new Open(name, attributes, transform, looks, new ArrayList<>());
    }

    private static Bounds frame(Map<String, String> attributes) {
        NumberScanner scanner = new NumberScanner(attributes.getOrDefault("viewBox", ""));
        Bounds frame = new Bounds(scanner.number(), scanner.number(), scanner.number(), scanner.number());
        if (!scanner.atEnd()) {
            throw new IllegalArgumentException("the viewBox has more than four numbers; write x y width height");
        }
        return frame;
    }

    private void declare(String id) {
        if (parts.containsKey(id)) {
            throw new IllegalArgumentException("there are two parts [" + id + "]; put them in one <g>, or rename one");
        }
        parts.put(id, here());
    }

    @Override
    public void characters(char[] chars, int start, int length) {
        if (refusedDepth > 0 || open.isEmpty()) {
            return;
        }
        String words = new String(chars, start, length);
        if (open.element().name().matches("title|desc|text")) {
            characters.append(words);
        } else if (!words.isBlank()) {
            problems.error(here(), "there are words outside of <text>", "delete them");
        }
    }

    @Override
    public void endElement(String uri, String name, String qName) {
        if (refusedDepth > 0) {
            refusedDepth--;
            return;
        }
        Open closed = open.pop();
        try {
            switch (closed.name()) {
                case "svg" -> all = new Piece.Part("", closed.pieces());
                case "g" -> closeGroup(closed);
                case "text" -> open.element().pieces().add(label(closed, characters.toString().strip()));
                case "title" -> title = ofDrawing(title);
                case "desc" -> description = ofDrawing(description);
                default -> characters.setLength(0);
            }
        } catch (IllegalArgumentException e) {
            problems.error(here(), e);
        }
    }

    private String ofDrawing(String before) {
        if (!open.element().name().equals("svg") || !before.isEmpty()) {
            throw new IllegalArgumentException("a drawing has one <title> and one <desc>; put them right inside <svg>");
        }
        return characters.toString().strip();
    }

    private void closeGroup(Open closed) {
        Open parent = open.element();
        String id = closed.attributes().getOrDefault("id", "");
        if (!closed.attributes().containsKey("id")) {
            parent.pieces().addAll(closed.pieces());
        } else if (closed.pieces().isEmpty()) {
            throw new IllegalArgumentException("the part [" + id + "] is empty; draw it or delete it");
        } else {
            parent.pieces().add(new Piece.Part(id, closed.pieces()));
        }
    }

    private static Piece.Label label(Open closed, String words) {
        Map<String, String> attributes = closed.attributes();
        if (words.isEmpty() || words.length() > LONGEST_LABEL) {
            throw new IllegalArgumentException("the label [" + words + "] has " + words.length() + " characters; "
                    + "write 1 to " + LONGEST_LABEL + ", the same in all languages");
        }
        double size = ShapeReader.number("font-size", attributes.getOrDefault("font-size", ""));
        double x = ShapeReader.number("x", attributes.getOrDefault("x", "0"));
        double y = ShapeReader.number("y", attributes.getOrDefault("y", "0"));
        String end = attributes.getOrDefault("text-anchor", Piece.Anchor.START.id());
        Piece.Anchor anchor = Arrays.stream(Piece.Anchor.values())
                .filter(each -> each.id().equals(end))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "[" + end + "] is no text-anchor; write start, middle or end"));
        Affine transform = closed.transform();
        return new Piece.Label(words, transform.x(x, y), transform.y(x, y), size * transform.size(), anchor,
                closed.looks().tone().orElse(Tone.DARK));
    }
}
