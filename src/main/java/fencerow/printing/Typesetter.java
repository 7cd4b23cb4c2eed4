package fencerow.printing;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.w3c.dom.Document;

/**
 * Sets XHTML as pages and writes them as tagged PDF. Fonts are the ones given here; nothing is fetched from anywhere.
 * May be used by several threads.
 */
final class Typesetter {
    private static final String ROBOTO = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
    private static final String CONDENSED = "/fencerow/printing/fonts/RobotoCondensed-";

    private final FSCacheEx<String, FSCacheValue> fontMetrics = new FSDefaultCacheStore();
    private final Consumer<String> warnings;

    /** @param warnings is told whatever the renderer finds fault with, such as a style it does not know */
    Typesetter(Consumer<String> warnings) {
        this.warnings = warnings;
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new OnlyEmbeddedFonts(open(ROBOTO + "Regular.ttf")));
    }

    /** Pages as set, not yet written. To be closed. */
    static final class Pages implements AutoCloseable {
        private final PdfBoxRenderer renderer;
        private final ByteArrayOutputStream out;

        private Pages(PdfBoxRenderer renderer, ByteArrayOutputStream out) {
            this.renderer = renderer;
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
        }
    }

    /** Sets a document. */
    Pages set(Document document) {
        var out = new ByteArrayOutputStream();
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
                .toStream(out);
        addFont(builder, ROBOTO + "Regular.ttf", "Roboto", 400);
        addFont(builder, ROBOTO + "Bold.ttf", "Roboto", 700);
        addFont(builder, CONDENSED + "Regular.ttf", "Roboto Condensed", 400);
        addFont(builder, CONDENSED + "Bold.ttf", "Roboto Condensed", 700);
        PdfBoxRenderer renderer = builder.buildPdfRenderer();
        renderer.layout();
        return new Pages(renderer, out);
    }

    private static void addFont(PdfRendererBuilder builder, String resource, String family, int weight) {
        builder.useFont(() -> open(resource), family, weight, FontStyle.NORMAL, true);
    }

    private static InputStream open(String resource) {
        InputStream stream = Typesetter.class.getResourceAsStream(resource);
        if (stream == null) {
            throw new IllegalStateException("the typeface " + resource + " is not on the class path");
        }
        return stream;
    }
}
