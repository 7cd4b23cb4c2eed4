package fencerow.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.Inline;
import fencerow.explainers.Library;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PseudoLocaleTest {
    private static String of(String pattern) {
        return PseudoLocale.of(new Texts("en", Map.of("key", pattern))).get("key");
    }

    @Test
    void lettersGetAccentsAndSomeDouble() {
        assertEquals("Fŕóóńńť ĺóóááďééŕ", of("Front loader"));
    }

    @Test
    void sentencesGrowByThreeToFiveTenths() {
        String sentence = "Look behind the bucket for one or two levers and a frame, then ask for the price.";
        double growth = (double) of(sentence).length() / sentence.length();
        assertTrue(growth > 1.3 && growth < 1.5, () -> "grew by " + growth);
    }

    @Test
    void argumentsPluralsAndQuotesKeepWorking() {
        var texts = PseudoLocale.of(new Texts("en", Map.of(
                "key", "{count, plural, one {# unit of {maker}} other {# units of {maker}}} don't '{'stay'}'")));
        assertEquals(Set.of("count", "maker"), TextPattern.arguments(texts.get("key")));
        String one = texts.get("key", Map.of("count", 1, "maker", "Oak"));
        String many = texts.get("key", Map.of("count", 1200, "maker", "Oak"));
        assertTrue(one.startsWith("1 ") && one.contains("Oak"), one);
        assertTrue(many.startsWith("1,200 ") && many.contains("Oak"), many);
        assertTrue(many.length() > one.length() && many.contains("{") && many.contains("}"), many);
        assertFalse(one.contains("unit"), one);
    }

    @Test
    void articlesChangeTheirWordsAndKeepTheirLinks() {
        var article = new Explainer(new TopicId("loader"), "en", "Loader", "Lifts.", Stop.LOADER,
                List.of(new TopicId("resale")), Optional.empty(), List.of("slopes"),
                List.of(new Block.OfferingTable(), new Block.Paragraph(List.of(
                        new Inline.TopicLink("resale", new TopicId("resale")), new Inline.Text(" matters")))));
        Explainer changed = PseudoLocale.of(new Library("en", List.of(article), List.of())).explainers().get(0);
        assertEquals("qps", changed.language());
        assertEquals(article.related(), changed.related());
        assertEquals(new Block.OfferingTable(), changed.blocks().get(0));
        var link = (Inline.TopicLink) ((Block.Paragraph) changed.blocks().get(1)).words().get(0);
        assertEquals(new TopicId("resale"), link.topic());
        assertEquals("ŕééššááĺéé", link.words());
    }

    @Test
    void flawsInPatternsAreFound() {
        assertEquals(Optional.empty(), TextPattern.flaw("{name} isn't {count, plural, other {#}}"));
        assertTrue(TextPattern.flaw("{name").isPresent());
        assertTrue(TextPattern.flaw("{0} of {1}").isPresent());
        assertTrue(TextPattern.flaw("{count, plural, one {#}}").isPresent(), "no other");
    }
}
