package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.QualityDocument;
import fencerow.backoffice.document.SearchDocument;
import fencerow.backoffice.document.SearchDocument.HitEntry;
import fencerow.content.Content;
import fencerow.terms.TopicId;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SearchCommandTest {
    @Test
    void hitsAreOfTheContentAndTheBestComesFirst() {
        SearchDocument document =
                Run.of("search", "--json", "quick", "attach").fine().document(SearchDocument.class);
        Content content = Run.shipped();

        assertEquals("quick attach", document.words());
        assertEquals("quick-attach", document.hits().get(0).id());
        assertEquals("explainer", document.hits().get(0).kind());
        for (HitEntry hit : document.hits()) {
            assertTrue(isThere(hit, content), hit.kind() + " " + hit.id());
            assertFalse(hit.title().isBlank(), hit.id());
        }
    }

    private static boolean isThere(HitEntry hit, Content content) {
        return switch (hit.kind()) {
            case "explainer" -> content.getLibrary("en").find(new TopicId(hit.id())).isPresent();
            case "word" -> content.getLibrary("en").findWord(hit.id()).isPresent();
            case "unit" -> content.showroom().units().stream()
                    .anyMatch(unit -> unit.id().equals(new UnitId(hit.id())));
            default -> content.getTexts("en").keys().stream()
                    .anyMatch(key -> key.startsWith(hit.kind() + "." + hit.id() + "."));
        };
    }

    @Test
    void theBeginningOfAWordIsEnough() {
        String text = Run.of("search", "rem", "--top", "1").fine().out();

        assertTrue(text.startsWith("Rear remotes  [explainer rear-remotes]"), text);
    }

    @Test
    void nothingFoundNamesWhatComesNearest() {
        Run run = Run.of("search", "zzzqqqxxx", "--json");

        assertEquals(FencerowCommand.NOT_FINE, run.code());
        SearchDocument document = run.document(SearchDocument.class);
        assertTrue(document.hits().isEmpty());
        assertFalse(document.nearest().isEmpty());
    }

    @Test
    void judgedQueriesAreEvaluated(@TempDir Path folder) throws IOException {
        Path judged = Files.writeString(folder.resolve("judged.tsv"),
                "quick attach\ten\texplainer/quick-attach:3\nzzzqqqxxx\ten\texplainer/rear-remotes:1\n");

        QualityDocument quality =
                Run.of("search", "--evaluate", judged.toString(), "--json").fine().document(QualityDocument.class);

        // By hand: the first query has its one right hit first, the second has none.
        assertEquals(2, quality.queries());
        assertEquals(new BigDecimal("0.5"), quality.mrr());
        assertEquals(new BigDecimal("0.5"), quality.ndcg());
        assertEquals(new BigDecimal("0.5"), quality.zeroResults());
    }

    @Test
    void judgmentsInAnotherFormAreNamedWithTheirLine(@TempDir Path folder) throws IOException {
        Path judged = Files.writeString(folder.resolve("judged.tsv"), "# judged\nquick attach\ten\n");

        Run run = Run.of("search", "--evaluate", judged.toString()).failed(FencerowCommand.NOT_FINE);

        assertTrue(run.err().contains(judged + ":2: "), run.err());
    }

    @Test
    void nothingToLookForIsWrongUse() {
        Run run = Run.of("search").failed(FencerowCommand.WRONG_USE);

        assertTrue(run.err().contains("WORDS"), run.err());
    }
}
