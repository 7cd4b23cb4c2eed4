package fencerow.printing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A typeface the pages are set in, read once.
 *
 * @param family as style sheets name it
 * @param weight 400 regular, 700 bold
 * @param font   not to be used by two threads at once
 */
record Typeface(String family, int weight, TrueTypeFont font) {
    /**
     * Reads a face from the class path. Ligatures are switched off: a reader that copies or searches "floor" is to find
     * these five letters.
     *
     * @throws IllegalStateException if it is not there
     * @throws UncheckedIOException  if it cannot be read
     */
    static Typeface read(String family, int weight, String resource) {
        try (InputStream stream = Typeface.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("the typeface " + resource + " is not on the class path");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream));
            font.setEnableGsub(false);
            return new Typeface(family, weight, font);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface " + resource + " cannot be read", e);
        }
    }

    /** The face in a document; only the letters used go into it. */
    PDFont in(PDDocument document) {
        try {
            return PDType0Font.load(document, font, true);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface " + family + " cannot be embedded", e);
        }
    }
}
