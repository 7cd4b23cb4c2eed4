package fencerow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.UnitId;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of units; the files are written by the JDK's own encoders, so that sizes are told by somebody else. */
class PictureFilesTest {
    private static final UnitId UNIT = new UnitId("n-201");

    @TempDir
    private Path outer;

    private Path folder = Path.of("");

    @BeforeEach
    void makeTheFolder() throws IOException {
        folder = Files.createDirectory(outer.resolve("unit-pictures"));
    }

    private void write(String name, int width, int height) throws IOException {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        String format = name.substring(name.lastIndexOf('.') + 1);
        assertTrue(ImageIO.write(image, format, folder.resolve(name).toFile()), name);
    }

    private PictureFiles having(String name) {
        return new PictureFiles(folder, Map.of(UNIT, name));
    }

    @Test
    void pngAndJpegAreFoundByTheirUnitWithTheirSizesAsTheEncoderWroteThem() throws IOException {
        write("n-201.png", 37, 21);
        write("n-201.jpg", 640, 480);
        for (String name : List.of("n-201.png", "n-201.jpg")) {
            byte[] found = having(name).find(UNIT).orElseThrow();
            assertArrayEquals(Files.readAllBytes(folder.resolve(name)), found);
            assertEquals(Optional.empty(), having(name).findFault(name));
        }
        assertArrayEquals(new int[] {37, 21},
                PictureFiles.size(Files.readAllBytes(folder.resolve("n-201.png"))).orElseThrow());
        assertArrayEquals(new int[] {640, 480},
                PictureFiles.size(Files.readAllBytes(folder.resolve("n-201.jpg"))).orElseThrow());
        assertEquals(List.of("n-201.jpg", "n-201.png"), having("n-201.png").names());
    }

    @Test
    void aNameNeverLeadsOutOfTheFolder() throws IOException {
        Files.write(outer.resolve("secret.png"), new byte[] {1});
        Files.createSymbolicLink(folder.resolve("link.png"), outer.resolve("secret.png"));
        for (String name : List.of("../secret.png", "/etc/passwd", "a/b.png", "..\\secret.png", ".png", "a.gif",
                "a.png/../../secret.png", "n\u0000.png")) {
            assertEquals(Optional.of("name"), having(name).findFault(name), name);
            assertEquals(Optional.empty(), having(name).find(UNIT), name);
        }
        assertEquals(Optional.of("missing"), having("link.png").findFault("link.png"));
        assertEquals(Optional.of("missing"), having("gone.png").findFault("gone.png"));
    }

    @Test
    void hugeAndBrokenPicturesAreRefusedAndStaffAreToldWhatToDo() throws IOException {
        Files.write(folder.resolve("big.png"), new byte[8_000_001]);
        Files.writeString(folder.resolve("text.png"), "this is no picture, only words in a file of that name");
        byte[] bomb = new byte[64];
        ByteBuffer.wrap(bomb).putLong(0, 0x89504e470d0a1a0aL).putInt(16, 60_000).putInt(20, 60_000);
        Files.write(folder.resolve("bomb.png"), bomb);
        write("whole.jpg", 64, 64);
        byte[] whole = Files.readAllBytes(folder.resolve("whole.jpg"));
        Files.write(folder.resolve("cut.jpg"), Arrays.copyOf(whole, 20));

        assertEquals(Optional.of("large"), having("big.png").findFault("big.png"));
        assertEquals(Optional.of("large"), having("bomb.png").findFault("bomb.png"));
        assertEquals(Optional.of("broken"), having("text.png").findFault("text.png"));
        assertEquals(Optional.of("broken"), having("cut.jpg").findFault("cut.jpg"));
        assertEquals(List.of("unit n-201: its picture [text.png] is broken; put a PNG or JPEG of at most 8 MB and 6000"
                + " dots a side into unit-pictures, or choose another"), having("text.png").problems());
    }
}
