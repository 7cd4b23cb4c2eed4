package fencerow;

import fencerow.kiosk.frame.UnitPictures;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Photographs of units in one folder of the configuration. A name cannot lead out of it, and a file that is too large,
 * or whose first bytes are no PNG's or JPEG's of a size that can be shown, is not looked at further. For any thread.
 */
final class PictureFiles implements UnitPictures {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,80}\\.(png|jpg|jpeg)");
    private static final long MOST_BYTES = 8_000_000;
    private static final int MOST_DOTS = 6_000;
    private static final int MOST_NAMES = 500;
    private static final long PNG = 0x89504e470d0a1a0aL;
    private static final int PNG_HEADER = 24;
    private static final int JPEG_START = 0xffd8;
    private static final int JPEG_SCAN = 0xda;

    private final Path folder;
    private final Map<UnitId, String> byUnit;

    /** @param byUnit names of files, as the stock writes them */
    PictureFiles(Path folder, Map<UnitId, String> byUnit) {
        this.folder = folder;
        this.byUnit = Map.copyOf(byUnit);
    }

    @Override
    public List<String> names() {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString())
                    .filter(name -> NAME.matcher(name).matches())
                    .sorted()
                    .limit(MOST_NAMES)
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    @Override
    public boolean has(UnitId unit) {
        return byUnit.containsKey(unit);
    }

    @Override
    public Optional<byte[]> find(UnitId unit) {
        return Optional.ofNullable(byUnit.get(unit))
                .map(this::read)
                .filter(Read.Good.class::isInstance)
                .map(good -> ((Read.Good) good).bytes());
    }

    @Override
    public Optional<String> findFault(String name) {
        return read(name) instanceof Read.Bad bad ? Optional.of(bad.why()) : Optional.empty();
    }

    /** What is wrong with pictures that units have, each with what to do; for staff. */
    List<String> problems() {
        return byUnit.entrySet().stream()
                .sorted(Map.Entry.comparingByKey((one, other) -> one.value().compareTo(other.value())))
                .flatMap(entry -> findFault(entry.getValue()).stream().map(why -> "unit " + entry.getKey()
                        + ": its picture [" + entry.getValue() + "] is " + why + "; put a PNG or JPEG of at most 8 MB"
                        + " and 6000 dots a side into " + folder.getFileName() + ", or choose another"))
                .toList();
    }

    private sealed interface Read {
        record Good(byte[] bytes) implements Read {}

        /** @param why a word of text keys */
        record Bad(String why) implements Read {}
    }

    private Read read(String name) {
        if (!NAME.matcher(name).matches()) {
            return new Read.Bad("name");
        }
        Path file = folder.resolve(name);
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                return new Read.Bad("missing");
            }
            if (Files.size(file) > MOST_BYTES) {
                return new Read.Bad("large");
            }
            byte[] bytes = Files.readAllBytes(file);
            Optional<int[]> size = size(bytes);
            if (size.isEmpty()) {
                return new Read.Bad("broken");
            }
            return Arrays.stream(size.get()).anyMatch(dots -> dots > MOST_DOTS)
                    ? new Read.Bad("large")
                    : new Read.Good(bytes);
        } catch (IOException e) {
            return new Read.Bad("missing");
        }
    }

    /** Width and height as the file's beginning tells them; empty if it is no PNG or JPEG. */
    static Optional<int[]> size(byte[] bytes) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        if (bytes.length >= PNG_HEADER && buffer.getLong(0) == PNG) {
            return positive(buffer.getInt(16), buffer.getInt(20));
        }
        return bytes.length > 4 && (buffer.getShort(0) & 0xffff) == JPEG_START ? jpegSize(buffer) : Optional.empty();
    }

    /** Goes from segment to segment as far as the one of the frame (ITU-T T.81, B.1.1 and B.2.2). */
    private static Optional<int[]> jpegSize(ByteBuffer buffer) {
        int at = 2;
        while (at + 9 < buffer.limit() && (buffer.get(at) & 0xff) == 0xff) {
            int marker = buffer.get(at + 1) & 0xff;
            boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
            if (frame) {
                return positive(buffer.getShort(at + 7) & 0xffff, buffer.getShort(at + 5) & 0xffff);
            }
            if (marker == JPEG_SCAN) {
                return Optional.empty();
            }
            at += 2 + (buffer.getShort(at + 2) & 0xffff);
        }
        return Optional.empty();
    }

    private static Optional<int[]> positive(int width, int height) {
        return width > 0 && height > 0 ? Optional.of(new int[] {width, height}) : Optional.empty();
    }
}
