package fencerow.printing;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.util.XRLog;
import fencerow.explainers.Pictures;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.w3c.dom.Document;

/**
 * Sets XHTML as pages and writes them as tagged PDF. Fonts are the ones given here; nothing is fetched from anywhere.
 * For one thread at a time.
 */
final class Typesetter {
    private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
    private static final String CONDENSED = "/fencerow/printing/fonts/RobotoCondensed-";

    private final FSCacheEx<String, FSCacheValue> fontMetrics = new FSDefaultCacheStore();
    private final Consumer<String> warnings;
    private final List<Typeface> faces;
    private final DrawingPainter painter = new DrawingPainter();

    /** @param warnings is told whatever the renderer finds fault with, such as a style it does not know */
    Typesetter(Consumer<String> warnings) {
        this.warnings = warnings;
        XRLog.setLoggerImpl(new QuietRenderer());
        this.faces = List.of(
                Typeface.read("Roboto", 400, ROBOTO + "Regular.ttf"),
                Typeface.read("Roboto", 700, ROBOTO + "Bold.ttf"),
                Typeface.read("Roboto Condensed", 400, CONDENSED + "Regular.ttf"),
                Typeface.read("Roboto Condensed", 700, CONDENSED + "Bold.ttf"));
        FontMappers.set(new OnlyEmbeddedFonts(faces.get(0).font()));
    }

    /** Pages as set, not yet written. To be closed. */
    static final class Pages implements AutoCloseable {
        private final PdfBoxRenderer renderer;
        private final PDDocument pdf;
        private final ByteArrayOutputStream out;

        private Pages(PdfBoxRenderer renderer, PDDocument pdf, ByteArrayOutputStream out) {
            this.renderer = renderer;
            this.pdf = pdf;
            this.out = out;
        }

        /** How many. */
        int count() {
            return renderer.getRootBox().getLayer().getPages().size();
        }

        /** How far the last page's words reach beyond the first page, in the renderer's dots; 0 on one page. */
        private int beyondPageOne() {
            List<PageBox> pages = renderer.getRootBox().getLayer().getPages();
            Box root = renderer.getRootBox();
            return pages.size() == 1 ? 0 : root.getAbsY() + root.getHeight() - pages.get(0).getBottom();
        }

        /** How many elements like the one with the id would have to go for all to stand on page one; a guess. */
        int tooMany(String id) {
            Box box = renderer.getSharedContext().getBoxById(id);
            int height = box == null ? 0 : box.getParent().getHeight();
            return height <= 0 ? 1 : (beyondPageOne() + height - 1) / height;
        }

        /** How many printed lines the element with the id takes; 0 if there is none or it holds more than words. */
        int linesOf(String id) {
            Box box = renderer.getSharedContext().getBoxById(id);
            if (box == null) {
                return 0;
            }
            return (int) box.getChildren().stream().filter(LineBox.class::isInstance).count();
        }

        /** The document. */
        byte[] write() {
            try {
                renderer.createPDF();
            } catch (IOException e) {
                throw new UncheckedIOException("the pages could not be written as PDF", e);
            }
            return out.toByteArray();
        }

        @Override
        public void close() {
            renderer.close();
            try {
                pdf.close();
            } catch (IOException e) {
                throw new UncheckedIOException("the pages could not be closed", e);
            }
        }
    }

    /** Sets a document, with pictures where it names them. */
    Pages set(Document document, Pictures pictures) {
        var out = new ByteArrayOutputStream();
        var pdf = new PDDocument();
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .usePdfUaAccessibility(true)
                .useFastMode()
                .withProducer("Fencerow")
                .withW3cDocument(document, null)
                .useCacheStore(CacheStore.PDF_FONT_METRICS, fontMetrics)
                .useUriResolver((base, uri) -> null)
                .useExternalResourceAccessControl(
                        (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
                .withDiagnosticConsumer(diagnostic -> {
                    if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
                        warnings.accept(diagnostic.getFormattedMessage());
                    }
                })
                .useObjectDrawerFactory(QrCode.drawers())
                .useSVGDrawer(new PictureDrawer(pictures, painter))
                .usePDDocument(pdf)
                .toStream(out);
        for (Typeface face : faces) {
            builder.useFont(new PDFontSupplier(face.in(pdf)), face.family(), face.weight(), FontStyle.NORMAL, true);
        }
        PdfBoxRenderer renderer = builder.buildPdfRenderer();
        renderer.layout();
        return new Pages(renderer, pdf, out);
    }
}
