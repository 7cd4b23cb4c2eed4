package fencerow.printing;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** A look into a PDF. */
final class Pdf {
    private Pdf() {}

    /** What a validator of PDF/UA-1 (ISO 14289-1) finds wrong; nothing in a good document. */
    static List<String> faults(byte[] pdf) {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance()
                        .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            return result.getTestAssertions().stream()
                    .filter(each -> each.getStatus() == TestAssertion.Status.FAILED)
                    .map(each -> each.getRuleId().getClause() + "-" + each.getRuleId().getTestNumber() + " "
                            + each.getMessage() + " at " + each.getLocation().getContext())
                    .toList();
        } catch (IOException | VeraPDFException e) {
            throw new AssertionError("the validator did not get through", e);
        }
    }

    /** The document opened. To be closed. */
    static PDDocument open(byte[] pdf) {
        try {
            return Loader.loadPDF(pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A page's words in the order they are written, which is the order a reader hears them in. Pages from 1. */
    static String text(PDDocument document, int page) {
        try {
            var stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every letter of a page, with size and place. */
    static List<TextPosition> letters(PDDocument document, int page) {
        List<TextPosition> letters = new ArrayList<>();
        try {
            var stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    letters.addAll(positions);
                }
            };
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            stripper.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return letters;
    }

    /** With every run of blanks and line ends as one blank. */
    static String flat(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    /** How many table rows the first table of the structure tree has. */
    static int rowsOf(PDDocument document) {
        return rows(document.getDocumentCatalog().getStructureTreeRoot().getKids(), new int[1]);
    }

    private static int rows(List<Object> kids, int[] tables) {
        int rows = 0;
        for (Object kid : kids) {
            if (kid instanceof PDStructureElement element) {
                String type = element.getStructureType();
                if (type.equals("Table") && ++tables[0] > 1) {
                    continue;
                }
                rows += (type.equals("TR") ? 1 : 0) + rows(element.getKids(), tables);
            }
        }
        return rows;
    }

    /** A page as a grey picture. Pages from 1. */
    static BufferedImage picture(PDDocument document, int page, int dpi) {
        try {
            return new PDFRenderer(document).renderImageWithDPI(page - 1, dpi);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a reader makes of the modules of a QR code. */
    static String decode(ByteMatrix modules) {
        BitMatrix bits = new BitMatrix(modules.getWidth(), modules.getHeight());
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y) == 1) {
                    bits.set(x, y);
                }
            }
        }
        try {
            return new Decoder().decode(bits).getText();
        } catch (ChecksumException | FormatException e) {
            throw new AssertionError("the code cannot be read", e);
        }
    }
}
