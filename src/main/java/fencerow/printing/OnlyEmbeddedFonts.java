package fencerow.printing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers the PDF library's search for fonts that are not embedded with the one we have. Left to itself it reads every
 * font of the machine at the first page and keeps a file of them in the home folder; our pages embed all they use.
 */
final class OnlyEmbeddedFonts implements FontMapper {
    private final TrueTypeFont font;

    /** @throws UncheckedIOException if the font cannot be read */
    OnlyEmbeddedFonts(InputStream font) {
        try (font) {
            this.font = new TTFParser().parse(new RandomAccessReadBuffer(font));
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface of the printed pages cannot be read", e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, false);
    }

    @Override
    public @Nullable CIDFontMapping getCIDFont(
            String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo cidSystemInfo) {
        return new CIDFontMapping(null, font, false);
    }
}
