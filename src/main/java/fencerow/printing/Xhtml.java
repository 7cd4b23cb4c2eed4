package fencerow.printing;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads the filled-in templates. Document types and whatever lies outside the text are refused. */
final class Xhtml {
    private Xhtml() {}

    /** @throws IllegalArgumentException if the text is not well formed */
    static Document parse(String xhtml) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new InputSource(new StringReader(xhtml)));
        } catch (SAXParseException e) {
            throw new IllegalArgumentException("the page is not well-formed XHTML: " + e.getMessage()
                    + ", near [" + line(xhtml, e.getLineNumber()) + "]; mend the template this comes from", e);
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new IllegalStateException("the page could not be read as XHTML", e);
        }
    }

    private static String line(String text, int number) {
        return text.lines().skip(Math.max(0, number - 1)).findFirst().orElse("").strip();
    }
}
