package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.Inline;
import fencerow.terms.TopicId;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words, articles, settings and what is known of the files themselves, found again in the content. */
class TinyLanguageTest {
    @TempDir
    private Path folder;

    private TinyContent tiny = new TinyContent(Path.of(""));

    @BeforeEach
    void copy() {
        tiny = TinyContent.copyTo(folder);
    }

    @Test
    void articlesBecomeBlocksInWalkAroundOrder() {
        var library = tiny.readGood().getLibrary("en");
        assertEquals(List.of("loader", "quick-attach", "roll-bar", "rear-remotes", "resale"),
                library.explainers().stream().map(each -> each.topic().value()).toList());
        Explainer loader = library.find(new TopicId("loader")).orElseThrow();
        assertEquals(List.of(new TopicId("quick-attach")), loader.related());
        assertEquals(List.of("loader"), loader.cautions());
        assertEquals(List.of(
                new Block.Heading("What it is"),
                new Block.Paragraph(List.of(
                        new Inline.Text("Some "), new Inline.Strong("strong"), new Inline.Text(" and "),
                        new Inline.Emphasis("soft"), new Inline.Text(" words, a "),
                        new Inline.TopicLink("topic", new TopicId("resale")), new Inline.Text(" and a "),
                        new Inline.WordLink("word", "remote"), new Inline.Text("."))),
                new Block.Heading("Is it standard?"),
                new Block.OfferingTable(),
                new Block.PriceNote(),
                new Block.Points(false, List.of(
                        List.of(new Inline.Text("one point")), List.of(new Inline.Text("another")))),
                new Block.Points(true, List.of(
                        List.of(new Inline.Text("first")), List.of(new Inline.Text("second")))),
                new Block.Table(List.of("class", "share"), List.of(List.of("small", "half")))), loader.blocks());
        var word = library.findWord("remote").orElseThrow();
        assertEquals(List.of("scv", "rear hydraulics"), word.also());
        assertEquals(Optional.of(new TopicId("rear-remotes")), word.topic());
    }

    @Test
    void wordsAndSettingsAreThere() {
        Content content = tiny.readGood();
        assertEquals("3 units at home",
                content.getTexts("en").get("units-shown", Map.of("count", 3, "place", "home")));
        assertEquals("Tiny Yard", content.getTexts("en").get("showroom.strip"));
        assertThrows(IllegalArgumentException.class, () -> content.getTexts("fr"));
        assertEquals(24 * 0.0254, content.settings().panel().diagonalMetres(), 1e-12);
        assertEquals(75, content.settings().idle().warnAfter().toSeconds());
        assertEquals(Optional.empty(), content.settings().paper().printer());
        assertEquals(14, content.showroom().composer().pageOne());
        assertEquals(Map.of("scv", new TopicId("rear-remotes")), content.aliases());
    }

    @Test
    void placesAreKeptByKindAndId() {
        Places places = tiny.readGood().places();
        assertEquals("content/features.yaml:5", places.find(Kind.FEATURE, "quick-attach").orElseThrow().toString());
        assertEquals("content/add-ons.yaml:14", places.find(Kind.ADD_ON, "hose-kit").orElseThrow().toString());
        assertEquals("kiosk-config/stock.csv:4", places.find(Kind.UNIT, "u-1").orElseThrow().toString());
        assertEquals("content/questions.yaml:36",
                places.find(Kind.OPTION, "tools/quick").orElseThrow().toString());
        assertEquals("content/en/explainers/resale.md:1", places.find(Kind.TOPIC, "resale").orElseThrow().toString());
        assertEquals(Optional.empty(), places.find(Kind.FEATURE, "no-such"));
        assertEquals(Set.of("worn-tires"), places.ids(Kind.CONDITION));
    }

    @Test
    void theVersionChangesWithAnyTextAndWithNothingElse(@TempDir Path elsewhere) {
        String version = tiny.readGood().version();
        assertEquals(version, TinyContent.copyTo(elsewhere.resolve("deep")).readGood().version());
        assertTrue(version.matches("[0-9a-f]{8}"), version);
        tiny.replace("content/en/explainers/resale.md", "They prove care.", "They prove much care.");
        assertNotEquals(version, tiny.readGood().version());
    }

    @Test
    void thePseudoLocaleNeedsNoWordsOfItsOwn() {
        tiny.replace("kiosk-config/showroom.yaml", "languages: [en]", "languages: [en, qps]");
        assertEquals(Set.of("en", "qps"), tiny.readGood().texts().keySet());
        assertEquals(Set.of("en", "qps"), tiny.readGood().libraries().keySet());
    }
}
