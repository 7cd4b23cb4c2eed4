package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextSheetTest {
    @Test
    void cellsStandUnderEachOther() {
        String text = new TextSheet().rows(2, List.of(List.of("a", "$1"), List.of("longer", "$20"))).toString();

        assertEquals("  a       $1\n  longer  $20\n", text);
    }

    @Test
    void longSentencesGoOnUnderThemselves() {
        String text = new TextSheet().point(4, "word ".repeat(40).strip()).toString();

        List<String> lines = text.lines().toList();
        assertEquals(3, lines.size(), text);
        assertTrue(lines.stream().allMatch(line -> line.length() <= 100), text);
        assertTrue(lines.get(1).startsWith("      word"), text);
        assertEquals("word ".repeat(40).strip(), text.strip().substring(2).replaceAll("\\s+", " "));
    }

    @Test
    void aWordLongerThanTheLineIsNotBroken() {
        String word = "x".repeat(130);

        assertEquals("    " + word + "\n", new TextSheet().line(4, word).toString());
    }

    @Test
    void headingsStandApart() {
        assertEquals("one\n\ntwo\n", new TextSheet().heading("one").heading("two").toString());
    }
}
