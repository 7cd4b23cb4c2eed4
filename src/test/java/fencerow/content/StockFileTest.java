package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.StockBook;
import fencerow.desk.StockRow;
import fencerow.terms.UnitId;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stock lists from elsewhere: what is understood, what is refused, and that what is written is read again. */
class StockFileTest {
    private static final UnitReader READER = ShippedContent.get().units();

    @TempDir
    Path folder;

    private final List<StockRow> taken = new ArrayList<>();
    private final List<Set<String>> spokenOf = new ArrayList<>();

    private StockFile.Read read(Path file, Map<String, String> told, Map<UnitId, StockRow> before) {
        StockBook.Intake intake = (row, said) -> {
            taken.add(row);
            spokenOf.add(said);
        };
        return new StockFile(READER, told, Map.of("Mid PTO", "mid-pto")).read(file, before, intake, rows -> { });
    }

    private StockFile.Read csv(String text) throws IOException {
        return read(Files.writeString(folder.resolve("list.csv"), text), Map.of(), Map.of());
    }

    private static void assertRefused(StockFile.Read read, String words) {
        assertTrue(read.problems().toString().contains(words), () -> read.problems().toString());
    }

    @Test
    void columnsAreFoundByNameSynonymAndTitleWhateverTheirCase() throws IOException {
        var read = csv("""
                Stock #,MODEL,New or used,Engine Hours,Availability,Our price,Mid-PTO
                t-1,Nettle-19,used,120,in-stock,9000,Yes
                """);

        assertEquals(List.of(), read.problems());
        assertEquals(StockRow.of(new UnitId("t-1"), Map.of("model", "nettle-19", "condition", "used", "hours", "120",
                "status", "in-stock", "asking", "9000", "mid-pto", "yes")), taken.get(0));
        assertEquals("id", read.understood().get("Stock #"));
    }

    @Test
    void aProblemNamesRowColumnWhatIsWrongAndWhatMayStandThere() throws IOException {
        var read = csv("""
                id,model,condition,status,asking,mid-pto
                t-1,nettle-19,new,in-stock,9000,maybe
                t-2,nettel-19,mint,in-stock,nine,yes
                t-3,nettle-19,new,in-stock,9000,no
                t-3,nettle-19,new,in-stock,9000,no
                """);

        assertEquals(3, read.wrong());
        assertEquals(List.of("t-3"), taken.stream().map(row -> row.id().value()).toList());
        assertRefused(read, "list.csv:2: column [mid-pto]: [maybe] is not understood; write one of yes, no, unknown");
        assertRefused(read, "list.csv:3: there is no model [nettel-19]; did you mean [nettle-19]?");
        assertRefused(read, "list.csv:3: column [condition]: [mint] is none of the words that can stand here;"
                + " use one of new, demo, used");
        assertRefused(read, "list.csv:3: column [asking]: [nine] is no whole number");
        assertRefused(read, "list.csv:5: column [id]: [t-3] stands in two rows");
    }

    @Test
    void anUnknownColumnIsSaidAndCanBeExplained() throws IOException {
        assertRefused(csv("id,Our color\nt-1,red\n"), "the column [Our color] is not known");
        Path file = folder.resolve("list.csv");
        Files.writeString(file, "id,Our color,Worth\nt-1,red,100\n");
        StockRow old = StockRow.of(new UnitId("t-1"),
                Map.of("model", "nettle-19", "condition", "new", "status", "in-stock", "asking", "90"));
        var read = read(file, Map.of("Our color", "", "Worth", "asking"), Map.of(old.id(), old));
        assertEquals(List.of(), read.problems());
        assertEquals(Map.of("asking", "100"), taken.get(0).cells());
    }

    @Test
    void aBlankCellOfEquipmentSaysNothingAndABlankPriceSaysThereIsNone() throws IOException {
        csv("id,model,condition,status,asking,promo,loader\nt-1,nettle-19,new,in-stock,9000,,\n");
        assertEquals(Set.of("id", "model", "condition", "status", "asking", "promo"), spokenOf.get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"list.csv", "list.xlsx"})
    void whatIsWrittenIsReadAgainToTheLetter(String name) throws IOException {
        long seed = 20260504;
        Random random = new Random(seed);
        List<StockRow> rows = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            Map<String, String> cells = new LinkedHashMap<>(Map.of("model", "nettle-19", "condition",
                    i % 2 == 0 ? "new" : "used", "status", "in-stock", "asking", "" + random.nextInt(90_000)));
            for (String column : List.of("loader", "mid-pto", "front-weights")) {
                int pick = random.nextInt(4);
                if (pick < 3) {
                    cells.put(column, List.of("yes", "no", "unknown").get(pick));
                }
            }
            rows.add(StockRow.of(new UnitId("t-" + i), cells));
        }
        Path file = folder.resolve(name);
        new StockExport(READER).write(file, rows);

        var read = read(file, Map.of(), Map.of());

        assertEquals(List.of(), read.problems(), "seed " + seed);
        assertEquals(rows, taken, "seed " + seed);
    }

    /** The parts that ECMA-376 part 1, 4th edition, asks of the smallest workbook, written by hand. */
    @Test
    void numbersAndTruthsOfAWorkbookFromElsewhereAreRead() throws IOException {
        String rel = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        String pkg = "http://schemas.openxmlformats.org/package/2006/";
        String main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        var sheet = new StringBuilder("<worksheet xmlns=\"" + main + "\"><sheetData><row r=\"2\">");
        List<String> head = List.of("id", "model", "condition", "status", "asking", "mid-pto");
        for (int i = 0; i < head.size(); i++) {
            sheet.append(text((char) ('A' + i) + "2", head.get(i)));
        }
        sheet.append("</row><row r=\"4\">").append(text("A4", "t-1")).append(text("B4", "nettle-19"))
                .append(text("C4", "new")).append(text("D4", "in-stock"))
                .append("<c r=\"E4\"><v>1.79E4</v></c><c r=\"F4\" t=\"b\"><v>1</v></c></row></sheetData></worksheet>");
        Map<String, String> parts = Map.of(
                "[Content_Types].xml", "<Types xmlns=\"" + pkg + "content-types\"><Override "
                        + "PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument."
                        + "spreadsheetml.sheet.main+xml\"/></Types>",
                "_rels/.rels", "<Relationships xmlns=\"" + pkg + "relationships\"><Relationship Id=\"r1\" Type=\"" + rel
                        + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>",
                "xl/workbook.xml", "<workbook xmlns=\"" + main + "\" xmlns:r=\"" + rel
                        + "\"><sheets><sheet name=\"S\" sheetId=\"1\" r:id=\"r1\"/></sheets></workbook>",
                "xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"" + pkg + "relationships\"><Relationship "
                        + "Id=\"r1\" Type=\"" + rel + "/worksheet\" Target=\"worksheets/sheet1.xml\"/></Relationships>",
                "xl/worksheets/sheet1.xml", sheet.toString());
        Map<String, byte[]> bytes = new HashMap<>();
        parts.forEach((name, xml) -> bytes.put(name, xml.getBytes(StandardCharsets.UTF_8)));

        assertEquals(List.of(), zip(bytes).problems());
        assertEquals("17900", taken.get(0).cells().get("asking"));
        assertEquals("yes", taken.get(0).cells().get("mid-pto"));
    }

    private static String text(String cell, String text) {
        return "<c r=\"" + cell + "\" t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
    }

    @Test
    void oneApostropheGoesBeforeWhatASpreadsheetWouldRunAndExactlyOneIsTakenAway() throws IOException {
        for (String text : List.of("=1+1", "+1", "-1", "@a", "'a", "''a", "plain", "")) {
            assertEquals(text, CellText.taken(CellText.written(text)));
        }
        for (String text : List.of("=1+1", "+1", "-1", "@a", "\ta", "'a")) {
            assertEquals("'" + text, CellText.written(text));
        }
        assertEquals("plain", CellText.written("plain"));
        Path file = folder.resolve("out.csv");
        new StockExport(READER).write(file, List.of(StockRow.of(new UnitId("t-1"), Map.of("model", "=cmd|x"))));
        assertTrue(Files.readString(file).contains("'=cmd|x"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/passwd", "/etc/x.png", "..\\\\x.png", "a/b.png", "x.exe", ".png", "a.png.."})
    void aPictureNameThatLeavesItsFolderIsRefused(String name) throws IOException {
        var read = csv("id,model,condition,status,asking,picture\nt-1,nettle-19,new,in-stock,9000," + name + "\n");
        assertRefused(read, "is no picture's file name");
        assertEquals(List.of(), taken);
    }

    @Test
    void hostileTextFilesAreRefused() throws IOException {
        assertRefused(csv("id,notes\nt-1,\"never closed\n"), "quotes");
        assertRefused(csv("id,notes\nt-1,\"a\nb\"\n"), "line break");
        assertRefused(csv("id,notes\nt-1," + "x".repeat(3_000) + "\n"), "3000 characters");
        assertRefused(csv("id" + ",".repeat(600) + "\n"), "601 cells");
        Path file = folder.resolve("latin.csv");
        Files.write(file, "id,notes\nt-1,caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        assertRefused(read(file, Map.of(), Map.of()), "not UTF-8");
        assertRefused(read(folder.resolve("none.csv"), Map.of(), Map.of()), "no such file");
    }

    @Test
    void hostileWorkbooksAreRefused() throws IOException {
        String workbook = "xl/workbook.xml";
        String secret = "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><x>&e;</x>";
        assertRefused(zip(Map.of(workbook, secret.getBytes(StandardCharsets.UTF_8))), "<!DOCTYPE");
        assertRefused(zip(Map.of(workbook, secret.getBytes(StandardCharsets.UTF_16))), "zero byte");
        assertRefused(zip(Map.of("xl/worksheets/sheet1.xml", "<c r=\"ZZZZZZ1\">".getBytes(StandardCharsets.UTF_8))),
                "holds what no table needs");
        assertRefused(zip(Map.of("xl/sharedStrings.xml", new byte[65_000_000])), "zero byte");
        byte[] blanks = " ".repeat(65_000_000).getBytes(StandardCharsets.US_ASCII);
        assertRefused(zip(Map.of("xl/sharedStrings.xml", blanks)), "unpacks to more than 64 MB");
        Map<String, byte[]> many = new HashMap<>();
        for (int i = 0; i < 1_001; i++) {
            many.put("a" + i, new byte[0]);
        }
        assertRefused(zip(many), "1001 parts");
        assertRefused(zip(Map.of(workbook, "<workbook/>".getBytes(StandardCharsets.UTF_8))), "broken");
        Path noZip = Files.writeString(folder.resolve("text.xlsx"), "id,model\n");
        assertRefused(read(noZip, Map.of(), Map.of()), "no XLSX workbook");
        assertFalse(Files.exists(folder.resolve("passwd")));
    }

    private StockFile.Read zip(Map<String, byte[]> parts) throws IOException {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return read(Files.write(folder.resolve("hostile.xlsx"), bytes.toByteArray()), Map.of(), Map.of());
    }
}
