package fencerow.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.wording.Texts;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.TextPosition;

/**
 * The norms of the printed page. Body type at least 12 points: large-print guidelines of associations of blind people
 * and layout rules of mailed surveys; margins at least 12.7 mm: a state's guide for printed surveys. Nothing below 10
 * points, and black: our choice.
 */
final class Norms {
    private static final double MARGIN = 12.7 / 25.4 * 72;
    private static final double SMALLEST = 10;
    private static final double BODY = 12;
    private static final double LARGE_BODY = 18;
    private static final double FOOT = 26 / 25.4 * 72;

    private Norms() {}

    /** Fails unless every page of the document keeps them. */
    static void assertHeld(PDDocument pdf, Texts texts, String which) throws IOException {
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            String where = which + ", page " + page;
            List<TextPosition> letters = Pdf.letters(pdf, page);
            assertTrue(letters.size() > 100, where + " is nearly empty");
            PDPage paper = pdf.getPage(page - 1);
            assertMargins(letters, paper.getMediaBox(), where);
            letters.forEach(letter -> assertTrue(letter.getFontSizeInPt() >= SMALLEST - 0.01,
                    () -> where + " has type of " + letter.getFontSizeInPt() + " points"));
            assertFurniture(Pdf.flat(Pdf.text(pdf, page)), texts, page, pdf.getNumberOfPages(), where);
        }
    }

    private static void assertMargins(List<TextPosition> letters, PDRectangle box, String where) {
        for (TextPosition letter : letters) {
            if (!letter.getUnicode().isBlank()) {
                double left = letter.getXDirAdj();
                double bottom = box.getHeight() - letter.getYDirAdj();
                assertTrue(left >= MARGIN - 0.1 && left + letter.getWidthDirAdj() <= box.getWidth() - MARGIN + 0.1
                                && letter.getYDirAdj() - letter.getHeightDir() >= MARGIN - 0.1
                                && bottom >= MARGIN - 0.1,
                        () -> where + ": [" + letter.getUnicode() + "] stands in the margin at " + left + ", "
                                + bottom);
            }
        }
    }

    /** Title, date of revision, page x of y and where to get help, on each page. */
    private static void assertFurniture(String text, Texts texts, int page, int pages, String where) {
        String title = Pdf.flat(texts.get("paper.title"));
        String number = Pdf.flat(texts.get("paper.page", Map.of("page", page, "pages", pages)));
        String help = Pdf.flat(texts.get("paper.help", Map.of("showroom", "Tumblegate Tractor Yard")));
        for (String part : List.of(title, number, help, "2026")) {
            assertTrue(text.contains(part), where + " lacks [" + part + "] in:\n" + text);
        }
    }

    /** Fails unless most letters above the foot are of the body's size or larger. */
    static void assertBodyType(PDDocument pdf, boolean large) {
        double body = large ? LARGE_BODY : BODY;
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            double foot = pdf.getPage(page - 1).getMediaBox().getHeight() - FOOT;
            List<TextPosition> letters = Pdf.letters(pdf, page).stream()
                    .filter(letter -> letter.getYDirAdj() < foot)
                    .toList();
            long fit = letters.stream().filter(letter -> letter.getFontSizeInPt() >= body - 0.01).count();
            double share = (double) fit / letters.size();
            assertTrue(share >= 0.5, "page " + page + ": only " + share + " of the letters are body type");
        }
    }

    /** Fails unless the fonts of every page are embedded. */
    static void assertFontsEmbedded(PDDocument pdf) throws IOException {
        int fonts = 0;
        for (PDPage page : pdf.getPages()) {
            for (var name : page.getResources().getFontNames()) {
                assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                fonts++;
            }
        }
        assertTrue(fonts > 0);
    }

    /** Fails unless the picture of the page is grey throughout and hardly anything in it is faint. */
    static void assertBlackAndWhite(java.awt.image.BufferedImage picture) {
        int coloured = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int rgb = picture.getRGB(x, y);
                int red = rgb >> 16 & 0xff;
                int green = rgb >> 8 & 0xff;
                int blue = rgb & 0xff;
                if (red != green || green != blue) {
                    coloured++;
                }
            }
        }
        assertEquals(0, coloured, "pixels with a colour");
    }
}
