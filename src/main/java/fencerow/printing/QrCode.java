package fencerow.printing;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import fencerow.wording.Texts;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.w3c.dom.Element;

/**
 * A QR code (ISO/IEC 18004) with the must-haves as plain text, drawn as one filled shape so that it stays sharp. At 600
 * bytes and level M it is version 20 or less: 97 modules and the quiet zone of four on each side, 0.43 mm a module at
 * 45 mm.
 */
final class QrCode {
    /** The most bytes of UTF-8 in a code. */
    static final int MOST_BYTES = 600;

    private static final int QUIET_ZONE = 4;

    private QrCode() {}

    /**
     * What the code says: title, the code to come back with, work and must-haves, one to a line, as many as fit. Empty
     * where there are neither must-haves nor a code to come back with.
     */
    static String text(Handout handout, Texts texts) {
        if (handout.mustHaves().isEmpty() && handout.comeBack().isEmpty()) {
            return "";
        }
        var text = new StringBuilder(texts.get("paper.title"));
        handout.comeBack().ifPresent(code -> append(text, ComparisonValues.comeBack(code, texts)));
        if (!handout.work().isEmpty()) {
            append(text, texts.get("paper.work.line", Map.of("work", handout.work())));
        }
        if (!handout.mustHaves().isEmpty()) {
            append(text, texts.get("paper.must-haves.heading") + ":");
        }
        handout.mustHaves().forEach(mustHave -> append(text, "- " + mustHave.words()));
        return text.toString();
    }

    private static void append(StringBuilder text, String line) {
        String longer = text + "\n" + line;
        if (longer.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES) {
            text.append("\n").append(line);
        }
    }

    /** Draws objects of the class {@code qr}: the text of their {@code data} into their box. */
    static FSObjectDrawerFactory drawers() {
        return new FSObjectDrawerFactory() {
            @Override
            public FSObjectDrawer createDrawer(Element element) {
                return drawer();
            }

            @Override
            public boolean isReplacedObject(Element element) {
                return element.getTagName().equals("object") && element.getAttribute("class").equals("qr");
            }
        };
    }

    private static FSObjectDrawer drawer() {
        return (element, x, y, width, height, device, context, dotsPerPixel) -> {
            ByteMatrix modules = encode(element.getAttribute("data"));
            device.drawWithGraphics((float) x, (float) y, (float) width / dotsPerPixel, (float) height / dotsPerPixel,
                    graphics -> draw(modules, graphics, Math.min(width, height) / dotsPerPixel));
            return Map.of();
        };
    }

    static ByteMatrix encode(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("a text of " + text.length() + " characters does not fit a QR code; "
                    + "keep it within " + MOST_BYTES + " bytes", e);
        }
    }

    private static void draw(ByteMatrix modules, Graphics2D graphics, double size) {
        double module = size / (modules.getWidth() + 2 * QUIET_ZONE);
        var black = new Path2D.Double();
        for (int row = 0; row < modules.getHeight(); row++) {
            int from = 0;
            while (from < modules.getWidth()) {
                int to = from;
                while (to < modules.getWidth() && modules.get(to, row) == 1) {
                    to++;
                }
                if (to > from) {
                    addRun(black, module * (from + QUIET_ZONE), module * (row + QUIET_ZONE),
                            module * (to - from), module);
                }
                from = to + 1;
            }
        }
        graphics.setColor(Color.BLACK);
        graphics.fill(black);
    }

    private static void addRun(Path2D path, double x, double y, double width, double height) {
        path.moveTo(x, y);
        path.lineTo(x + width, y);
        path.lineTo(x + width, y + height);
        path.lineTo(x, y + height);
        path.closePath();
    }
}
