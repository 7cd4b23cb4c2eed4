package fencerow.content;

import fencerow.content.TableRows.UnreadableTableException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Looks through a workbook before anything else does: unpacks it once into nothing, counting what comes out (what the
 * file itself says of its sizes is not believed), and refuses what no spreadsheet program writes.
 */
final class SafeZip {
    private static final int MOST_ENTRIES = 1_000;
    private static final long MOST_BYTES = 600_000_000;
    private static final long MOST_SHARED_TEXT = 64_000_000;
    private static final int OVERLAP = 32;
    /** Document types and entities; texts of two bytes a letter, which could hide them; columns beyond any sheet's. */
    private static final Pattern REFUSED = Pattern.compile("<!DOCTYPE|<!ENTITY|\u0000|\\sr=[\"'][A-Za-z]{4,}");

    private SafeZip() {}

    /** @throws UnreadableTableException if the file had better not be read */
    static void check(Path file) throws IOException, UnreadableTableException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            if (zip.size() > MOST_ENTRIES) {
                throw refused("the workbook has " + zip.size() + " parts, no workbook has more than " + MOST_ENTRIES);
            }
            long total = 0;
            for (Enumeration<? extends ZipEntry> entries = zip.entries(); entries.hasMoreElements();) {
                total += look(zip, entries.nextElement(), MOST_BYTES - total);
            }
        } catch (ZipException e) {
            throw new UnreadableTableException(1, "the file is no XLSX workbook",
                    "open it in a spreadsheet program and save it as XLSX or CSV");
        }
    }

    private static long look(ZipFile zip, ZipEntry entry, long room) throws IOException, UnreadableTableException {
        boolean text = entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels");
        long most = entry.getName().endsWith("sharedStrings.xml") ? Math.min(room, MOST_SHARED_TEXT) : room;
        byte[] buffer = new byte[1 << 16];
        String end = "";
        long count = 0;
        try (InputStream in = zip.getInputStream(entry)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                count += read;
                if (count > most) {
                    throw refused("[" + entry.getName() + "] unpacks to more than " + most / 1_000_000 + " MB");
                }
                if (text) {
                    String piece = end + new String(buffer, 0, read, StandardCharsets.ISO_8859_1);
                    Matcher found = REFUSED.matcher(piece);
                    if (found.find()) {
                        throw refused("[" + entry.getName() + "] holds what no table needs ("
                                + found.group().replace("\u0000", "a zero byte") + ")");
                    }
                    end = piece.substring(Math.max(0, piece.length() - OVERLAP));
                }
            }
        }
        return count;
    }

    private static UnreadableTableException refused(String what) {
        return new UnreadableTableException(1, what, "open it in a spreadsheet program and save the table as CSV");
    }
}
