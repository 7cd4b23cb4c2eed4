package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What drawings may hold, and that all else is refused with its line. */
class DrawingReaderTest {
    private static final String OPEN = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 50\">\n";

    private static Drawing read(String body) {
        var problems = new Problems();
        Drawing drawing = new DrawingReader(problems)
                .read(new SourceFile("a.svg", OPEN + body + "\n</svg>"))
                .map(DrawingReader.Read::drawing)
                .orElseThrow(() -> new AssertionError(problems.errors().toString()));
        assertEquals(List.of(), problems.errors());
        return drawing;
    }

    private static List<Problem> problems(String text) {
        var problems = new Problems();
        assertTrue(new DrawingReader(problems).read(new SourceFile("a.svg", text)).isEmpty());
        return problems.errors();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "<image href=\"x.png\"/>|<image>",
        "<path class=\"line\" d=\"M0 0L9 9\" style=\"fill:red\"/>|[style]",
        "<path class=\"line\" d=\"M0 0L9 9\" fill=\"red\"/>|[fill]",
        "<path class=\"line\" id=\"x\" d=\"M0 0L9 9\"/>|[id]",
        "<path class=\"line\" d=\"L9 9\"/>|start it with M",
        "<path class=\"line\" d=\"M0 0X9\"/>|[X9]",
        "<path class=\"lime\" d=\"M0 0L9 9\"/>|[line]",
        "<path class=\"line thin\" d=\"M0 0L9 9\"/>|two things",
        "<path d=\"M0 0L9 9\"/>|nothing of this would be seen",
        "<circle class=\"line\" r=\"0\"/>|above 0",
        "<rect class=\"line\" width=\"9\"/>|[height]",
        "<g transform=\"skewX(9)\"><circle class=\"line\" r=\"9\"/></g>|[skewX]",
        "<g transform=\"scale(1 2)\"><circle class=\"line\" r=\"9\"/></g>|differently",
        "<g id=\"loader\"></g>|is empty",
        "<g>words</g>|outside of <text>"})
    void whatIsNoneOfOursIsNamedWithItsLine(String body, String words) {
        List<Problem> found = problems(OPEN + "<title>A test</title>\n" + body + "\n</svg>");
        assertTrue(found.stream().anyMatch(each -> each.toString().startsWith("a.svg:3: ")
                && each.toString().contains(words)), found::toString);
    }

    @Test
    void documentTypesAreRefused() {
        List<Problem> found = problems("<?xml version=\"1.0\"?>\n"
                + "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]>\n"
                + OPEN + "<title>&a;</title></svg>");
        assertTrue(found.toString().contains("a.svg:2: there is a document type"), found::toString);
    }

    @Test
    void tooMuchIsRefused() {
        assertTrue(problems(OPEN + " ".repeat(DrawingReader.MOST_CHARACTERS)).toString().contains("characters"));
        assertTrue(problems(OPEN + "<g>".repeat(50) + "</g>".repeat(50) + "</svg>").toString()
                .contains("inside each other"));
    }

    @Test
    void groupsHandTransformsDownAndNameParts() {
        Drawing drawing = read("<g transform=\"translate(10 5) scale(2)\" class=\"line\"><g id=\"loader\">"
                + "<rect width=\"10\" height=\"4\"/></g></g>");
        assertEquals(Set.of("loader"), drawing.parts());
        assertEquals(new Bounds(10, 5, 20, 8), drawing.boundsOf("loader").orElseThrow());
    }
}
