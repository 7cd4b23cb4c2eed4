package fencerow.printing;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import fencerow.explainers.Picture;
import fencerow.explainers.Pictures;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/**
 * Draws the content's pictures on a page: wherever a template has {@code <svg name=".." alt=".."/>}, the picture of
 * that name, as wide as the style sheet says or as its frame is in CSS pixels. The words of {@code alt} become its
 * alternative text in the PDF.
 *
 * @param pictures to draw from
 * @param painter  that draws them
 */
record PictureDrawer(Pictures pictures, DrawingPainter painter) implements SVGDrawer {
    /** The attribute that names a picture. */
    private static final String NAME = "name";

    @Override
    public SVGImage buildSVGImage(
            Element element, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        String name = element.getAttribute(NAME);
        Drawing drawing = pictures.find(name).map(Picture::drawing).orElseThrow(() -> new IllegalArgumentException(
                "there is no picture [" + name + "] to print; name one of the content's"));
        return new Image(drawing, painter, size(drawing.frame(), cssWidth, cssHeight, dotsPerPixel), dotsPerPixel);
    }

    /** Width and height in dots; a side that the style sheet does not set is below zero and follows from the other. */
    private static Size size(Bounds frame, double cssWidth, double cssHeight, double dotsPerPixel) {
        double high = frame.height() / frame.width();
        if (cssWidth >= 0) {
            return new Size(cssWidth, cssHeight >= 0 ? cssHeight : cssWidth * high);
        }
        double height = cssHeight >= 0 ? cssHeight : frame.height() * dotsPerPixel;
        return new Size(height / high, height);
    }

    private record Size(double width, double height) {}

    private record Image(Drawing drawing, DrawingPainter painter, Size size, double dotsPerPixel) implements SVGImage {
        @Override
        public int getIntrinsicWidth() {
            return (int) size.width();
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) size.height();
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            double width = size.width() / dotsPerPixel;
            double height = size.height() / dotsPerPixel;
            device.drawWithGraphics((float) x, (float) y, (float) width, (float) height,
                    graphics -> painter.paint(drawing, graphics, 0, 0, width, height));
        }
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
        // Letters in drawings are outlines.
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        // Letters in drawings are outlines.
    }

    @Override
    public void close() {
        // Holds nothing open.
    }
}
