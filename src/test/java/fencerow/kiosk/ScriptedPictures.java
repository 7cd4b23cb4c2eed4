package fencerow.kiosk;

import fencerow.kiosk.frame.UnitPictures;
import fencerow.terms.UnitId;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/** Photographs of some units: whole ones and one whose file is damaged further in. For any thread. */
public final class ScriptedPictures implements UnitPictures {
    /** A unit whose photograph is wider than high. */
    public static final UnitId WIDE = new UnitId("u-401");
    /** A unit whose photograph is higher than wide. */
    public static final UnitId HIGH = new UnitId("n-203");
    /** A unit whose photograph is damaged. */
    public static final UnitId DAMAGED = new UnitId("u-406");

    private final Map<UnitId, byte[]> byUnit = Map.of(
            WIDE, drawn(1600, 1067), HIGH, drawn(900, 1200), DAMAGED, new byte[] {1, 2, 3});

    @Override
    public List<String> names() {
        return List.of();
    }

    @Override
    public boolean has(UnitId unit) {
        return byUnit.containsKey(unit);
    }

    @Override
    public Optional<byte[]> find(UnitId unit) {
        return Optional.ofNullable(byUnit.get(unit)).map(byte[]::clone);
    }

    @Override
    public Optional<String> findFault(String name) {
        return Optional.of("missing");
    }

    /** A sky, a ground, and something that stands there. */
    private static byte[] drawn(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setPaint(new GradientPaint(0, 0, new Color(0x7f9bb3), 0, height, new Color(0xd8dee2)));
        pen.fillRect(0, 0, width, height);
        pen.setPaint(new Color(0x6b7a4e));
        pen.fillRect(0, height * 2 / 3, width, height);
        pen.setPaint(new Color(0x5b5350));
        pen.fillRect(width / 4, height / 3, width / 2, height / 3);
        pen.fillOval(width / 5, height / 2, width / 4, width / 4);
        pen.fillOval(width * 3 / 5, height * 5 / 9, width / 6, width / 6);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpg", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
