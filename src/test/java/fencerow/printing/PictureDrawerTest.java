package fencerow.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import fencerow.explainers.Look;
import fencerow.explainers.Outline;
import fencerow.explainers.Outline.Step;
import fencerow.explainers.Piece;
import fencerow.explainers.Picture;
import fencerow.explainers.Pictures;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;

/** Drawings on paper: PDF/UA-1 (ISO 14289-1, by a validator), alternative text, size. */
class PictureDrawerTest {
    private static final Pictures PICTURES = new Pictures(Map.of("wedge", new Picture("wedge", wedge())));

    private static Drawing wedge() {
        Outline triangle = new Outline(List.of(
                new Step.Move(10, 10), new Step.Line(190, 10), new Step.Line(100, 90), new Step.Close()));
        return new Drawing(new Bounds(0, 0, 200, 100), "A wedge", "", List.of(
                new Piece.Shape(triangle, new Look(Look.Ink.LINE, Look.Tone.LIGHT, 2, false)),
                new Piece.Label("7/8", 100, 40, 20, Piece.Anchor.MIDDLE, Look.Tone.DARK)));
    }

    private static byte[] page(String body) {
        List<String> warnings = new ArrayList<>();
        byte[] pdf = page(body, warnings);
        assertEquals(List.of(), warnings);
        return pdf;
    }

    private static byte[] page(String body, List<String> warnings) {
        String xhtml = "<html lang=\"en\"><head><title>Pictures</title><meta name=\"subject\" content=\"A page\"/>"
                + "<style>body { font-family: Roboto; }</style></head><body><h1>Pictures</h1>" + body
                + "</body></html>";
        try (Typesetter.Pages pages = new Typesetter(warnings::add).set(Xhtml.parse(xhtml), PICTURES)) {
            return pages.write();
        }
    }

    private static List<String> alternatives(byte[] pdf) throws IOException {
        try (PDDocument document = Pdf.open(pdf)) {
            List<String> found = new ArrayList<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot(), found);
            return found;
        }
    }

    private static void collect(PDStructureNode node, List<String> found) {
        if (node instanceof PDStructureElement element && "Figure".equals(element.getStructureType())) {
            found.add(element.getAlternateDescription());
        }
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureNode inner) {
                collect(inner, found);
            }
        }
    }

    @Test
    void picturesAreFiguresWithTheirWordsAndKeepThePdfAccessible() throws IOException {
        byte[] pdf = page("<p><svg name=\"wedge\" alt=\"A wedge, its point down.\" style=\"width: 60mm\"/> "
                + "<svg name=\"wedge\" alt=\"The same again.\" style=\"width: 60mm\"/></p>");
        assertEquals(List.of(), Pdf.faults(pdf));
        assertEquals(List.of("A wedge, its point down.", "The same again."), alternatives(pdf));
    }

    @Test
    void withoutWordsTheValidatorObjects() {
        List<String> warnings = new ArrayList<>();
        List<String> faults = Pdf.faults(page("<p><svg name=\"wedge\" style=\"width: 60mm\"/></p>", warnings));
        assertTrue(warnings.toString().contains("alt"), warnings::toString);
        assertTrue(faults.stream().anyMatch(fault -> fault.startsWith("7.3-1 ")), faults::toString);
    }

    @Test
    void lettersAreOutlinesAndNoWordsOfThePage() throws IOException {
        try (PDDocument document = Pdf.open(page("<p><svg name=\"wedge\" alt=\"A wedge.\"/></p>"))) {
            assertEquals("Pictures", Pdf.text(document, 1).strip());
        }
    }

    @Test
    void anUnknownPictureIsNamed() {
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class, () -> page("<p><svg name=\"wegde\" alt=\"A wedge.\"/></p>"));
        assertTrue(thrown.getMessage().contains("[wegde]"), thrown.getMessage());
    }
}
