package fencerow.printing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
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
}
