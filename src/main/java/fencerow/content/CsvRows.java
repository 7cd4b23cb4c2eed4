package fencerow.content;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of a comma-separated file of UTF-8 text (RFC 4180). */
final class CsvRows implements TableRows {
    private static final String MARK = "\uFEFF";

    private final CSVParser parser;
    private final Iterator<CSVRecord> records;
    private int line = 1;

    CsvRows(Path file) throws IOException {
        var strict = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        this.parser = CSVParser.builder()
                .setReader(new BufferedReader(new InputStreamReader(Files.newInputStream(file), strict)))
                .setFormat(CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get())
                .get();
        this.records = parser.iterator();
    }

    @Override
    public Optional<Line> next() throws IOException, UnreadableTableException {
        int start = line;
        try {
            if (!records.hasNext()) {
                return Optional.empty();
            }
            List<String> cells = records.next().stream()
                    .map(cell -> cell.startsWith(MARK) ? cell.substring(1) : cell)
                    .map(String::strip)
                    .toList();
            line = (int) parser.getCurrentLineNumber() + 1;
            return Optional.of(TableRows.checked(start, cells));
        } catch (UncheckedIOException | IllegalStateException e) {
            if (e.getCause() instanceof CharacterCodingException) {
                throw new UnreadableTableException(start, "from about here on it is not UTF-8 text",
                        "save the file as CSV with the encoding UTF-8");
            }
            throw new UnreadableTableException(start, "the quotes in this row do not match",
                    "put quotes around the whole cell, and write a quote within it twice");
        }
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }
}
