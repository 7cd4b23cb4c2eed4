package fencerow.content;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import fencerow.explainers.Piece;
import java.io.IOException;
import java.io.StringReader;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Reads our own small part of SVG: {@code svg} with a viewBox; {@code title}, {@code desc}; {@code g} with a class, a
 * transform and, for a named part, an id; {@code path}, {@code rect}, {@code circle}, {@code ellipse}, {@code line},
 * {@code polyline}, {@code polygon}; {@code text}. Looks are classes only. Whatever else a file holds is refused with
 * its line, document types and entities before all.
 */
final class DrawingReader {
    /** The largest file, in characters. */
    static final int MOST_CHARACTERS = 64_000;

    private final Problems problems;

    DrawingReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * What a file came to.
     *
     * @param drawing itself
     * @param parts   where each of its parts starts
     */
    record Read(Drawing drawing, Map<String, Place> parts) {
        Read {
            parts = new TreeMap<>(parts);
        }
    }

    Optional<Read> read(SourceFile file) {
        if (file.text().length() > MOST_CHARACTERS) {
            problems.error(file.at(1), "the drawing has " + file.text().length() + " characters",
                    "simplify it; " + MOST_CHARACTERS + " is the most");
            return Optional.empty();
        }
        int before = problems.count();
        DrawingHandler handler = new DrawingHandler(file, problems);
        try {
            parser().parse(new InputSource(new StringReader(file.text())), handler);
        } catch (SAXParseException e) {
            boolean docType = String.valueOf(e.getMessage()).contains("DOCTYPE");
            problems.error(file.at(e.getLineNumber()),
                    docType ? "there is a document type" : "this is not well-formed XML (" + e.getMessage() + ")",
                    docType ? "delete the <!DOCTYPE ..>" : "close every element and write & as &amp;");
        } catch (SAXException | IOException e) {
            if (problems.count() == before) {
                problems.error(file.at(1), "the drawing cannot be read (" + e.getMessage() + ")", "draw it anew");
            }
        }
        if (problems.count() > before) {
            return Optional.empty();
        }
        Piece.Part all = handler.all();
        Bounds frame = handler.frame();
        return problems.make(file.at(1), before, () ->
                new Read(new Drawing(frame, handler.title(), handler.description(), all.pieces()), handler.parts()));
    }

    private static SAXParser parser() {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setXIncludeAware(false);
            return factory.newSAXParser();
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("this Java platform's XML parser cannot be made safe", e);
        }
    }
}
