package fencerow.content;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A text file that was read.
 *
 * @param name how problems name it
 * @param text its text; lines end with a line feed
 */
record SourceFile(String name, String text) {
    /** The largest file that is read, in bytes. */
    static final long MOST_BYTES = 4_000_000;

    /** The place of a line, from 1. */
    Place at(int line) {
        return new Place(name, Math.max(1, line));
    }

    /** Reads a file of UTF-8 text; what keeps it from being read is reported. */
    static Optional<SourceFile> read(Path file, String name, Problems problems) {
        var top = new Place(name, 1);
        try {
            if (!Files.isRegularFile(file)) {
                problems.error(top, "there is no such file", "create it, or correct the name of the folder");
                return Optional.empty();
            }
            if (Files.size(file) > MOST_BYTES) {
                problems.error(top, "the file has " + Files.size(file) + " bytes",
                        "split it; " + MOST_BYTES + " is the most");
                return Optional.empty();
            }
            return decode(Files.readAllBytes(file), name, problems);
        } catch (IOException e) {
            problems.error(top, "the file cannot be read (" + e.getClass().getSimpleName() + ")",
                    "check that it is a file this user may read");
            return Optional.empty();
        }
    }

    /** Decodes strictly: whatever is not UTF-8 text is reported with its line. */
    static Optional<SourceFile> decode(byte[] bytes, String name, Problems problems) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
        if (result.isError()) {
            problems.error(new Place(name, line), "these bytes are not UTF-8 text",
                    "save the file with the encoding UTF-8");
            return Optional.empty();
        }
        String unix = (text.startsWith("\uFEFF") ? text.substring(1) : text).replace("\r\n", "\n").replace('\r', '\n');
        return isText(unix, name, problems) ? Optional.of(new SourceFile(name, unix)) : Optional.empty();
    }

    private static boolean isText(String text, String name, Problems problems) {
        int line = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
            } else if (Character.isISOControl(c) && c != '\t' || c == '\uFEFF' || c >= '\uFFFE') {
                problems.error(new Place(name, line), "there is an invisible character (number " + (int) c + ")",
                        "delete it; retype the line if it cannot be seen");
                return false;
            }
        }
        return true;
    }
}
