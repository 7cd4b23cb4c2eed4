package fencerow.printing;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers the PDF library's search for fonts that are not embedded with the one we have. Left to itself it reads every
 * font of the machine at the first page and keeps a file of them in the home folder; our pages embed all they use.
 *
 * @param font stands in for every other
 */
record OnlyEmbeddedFonts(TrueTypeFont font) implements FontMapper {
    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public CIDFontMapping getCIDFont(
            String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo cidSystemInfo) {
        return new CIDFontMapping(null, font, false);
    }
}
