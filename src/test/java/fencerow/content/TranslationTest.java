package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a second language lacks, has too much of, or has not followed. */
class TranslationTest {
    private static final String EN = "content/en/words.yaml";
    private static final String ES = "content/es/words.yaml";
    private static final String ARTICLE = "content/es/explainers/resale.md";

    @TempDir
    private Path folder;

    private TinyContent tiny = new TinyContent(Path.of(""));

    /** A showroom in two languages, the second a copy of the first and accepted as it is. */
    @BeforeEach
    void translate() {
        tiny = TinyContent.copyTo(folder)
                .replace("kiosk-config/showroom.yaml", "languages: [en]", "languages: [en, es]")
                .replace("kiosk-config/showroom.yaml", "{en: \"Tiny Yard\"}",
                        "{en: \"Tiny Yard\", es: \"Patio\"}");
        for (String file : tiny.files()) {
            if (file.startsWith("content/en/")) {
                tiny.write(file.replace("content/en/", "content/es/"), tiny.text(file));
            }
        }
        accept();
    }

    private int accept(String... keys) {
        try {
            return TinyContent.good(new Translations(folder.resolve("content")).accept("es", List.of(keys)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> warnings() {
        assertEquals(List.of(), TinyContent.problems(tiny.read()));
        return tiny.read().warnings().stream().map(Problem::toString).toList();
    }

    private List<String> problems() {
        return TinyContent.problems(tiny.read()).stream().map(Problem::toString).toList();
    }

    private Translation state() {
        return Optional.ofNullable(tiny.readGood().translations().get("es")).orElseThrow();
    }

    @Test
    void whatIsAcceptedIsCurrent() {
        assertEquals(List.of(), warnings());
        assertTrue(state().current() > 100, () -> "only " + state());
        assertEquals(new Translation(state().current(), 0, 0, 0), state());
    }

    @Test
    void aChangeOfTheOriginalMakesItsTranslationStaleUntilItIsAccepted() {
        tiny.replace(EN, "parked: {name: \"parked\"}", "parked: {name: \"in the shed\"}");
        assertEquals(List.of(ES + ":" + tiny.lineOf(ES, "parked: {name") + ": [state.parked.name] is a translation of"
                + " what " + EN + ":" + tiny.lineOf(EN, "parked: {name") + " said before it was changed; translate it"
                + " anew, then run: fencerow translations accept es state.parked.name"), warnings());
        assertEquals(1, state().stale());
        assertEquals(1, accept("state.loader-work"));
        assertEquals(1, state().stale(), "another key was accepted");
        assertEquals(1, accept("state.parked"));
        assertEquals(List.of(), warnings());
    }

    @Test
    void aChangeOfAnArticlesTextMakesItStaleAndOneOfItsParticularsDoesNot() {
        String original = "content/en/explainers/resale.md";
        tiny.replace(original, "They prove care.", "They prove some care.");
        assertEquals(1, state().stale());
        assertTrue(warnings().get(0).startsWith(ARTICLE + ":1: [explainers/resale] is a translation of what"),
                warnings()::toString);
        assertEquals(1, accept("explainers/resale"));
        for (String file : List.of(original, ARTICLE)) {
            tiny.replace(file, "stop: papers\n", "stop: papers\nrelated: [loader]\n");
        }
        assertEquals(List.of(), warnings());
    }

    @Test
    void wordsAndArticlesThatAreMissingOrLeftOverAreProblems() {
        tiny.replace(ES, "units-shown:", "units-seen:").replace(ES, "  parked: {name: \"parked\"}\n", "");
        tiny.write("content/es/explainers/resail.md", tiny.text(ARTICLE).replace("topic: resale", "topic: resail"))
                .delete(ARTICLE);
        assertEquals(List.of(
                "content/en/explainers/resale.md:1: the article is not there in language [es]; write " + ARTICLE,
                EN + ":" + tiny.lineOf(EN, "  parked: {name") + ": there are no words for [state.parked.name] in"
                        + " language [es]; translate them in " + ES,
                EN + ":" + tiny.lineOf(EN, "units-shown") + ": there are no words for [units-shown] in language [es];"
                        + " translate them in " + ES,
                "content/es/explainers/resail.md:1: [explainers/resail] is not there in language [en]; did you mean"
                        + " [explainers/resale]?",
                ES + ":" + tiny.lineOf(ES, "units-seen") + ": [units-seen] is not there in language [en]; did you mean"
                        + " [units-shown]?"), problems());
    }

    @Test
    void argumentsAreTheSameInBothLanguages() {
        tiny.replace(ES, "at {place}", "en {plaza}");
        assertEquals(2, problems().size(), problems()::toString);
        assertTrue(problems().get(0).contains("has an argument {plaza} that ["), problems()::toString);
        assertTrue(problems().get(1).contains("has not the argument {place} that ["), problems()::toString);
    }

    @Test
    void particularsAndWhatTheProgramDrawsAreTheSameInBothLanguages() {
        String loader = "content/es/explainers/loader.md";
        tiny.replace(loader, "related: [quick-attach]", "related: [resale]").replace(loader, "{price}\n", "");
        assertEquals(List.of(
                loader + ":1: {offering} and {price} are not where they are in content/en/explainers/loader.md; put"
                        + " them at the same places",
                loader + ":" + tiny.lineOf(loader, "related:") + ": [related] is not the same as in"
                        + " content/en/explainers/loader.md; copy it from there"), problems());
    }

    @Test
    void wordsThatNobodyAcceptedAreNamedOneByOneOrAllAtOnce() {
        tiny.replace(EN, "  parked: {name", "  sold: {name: \"sold\"}\n  parked: {name")
                .replace(ES, "  parked: {name", "  sold: {name: \"vendido\"}\n  parked: {name")
                .replace("content/states.yaml", "- parked", "- parked\n- sold");
        assertEquals(1, warnings().size(), warnings()::toString);
        assertTrue(warnings().get(0).startsWith(ES + ":" + tiny.lineOf(ES, "sold:") + ": nobody has said that"
                + " [state.sold.name] translates the present original"), warnings()::toString);
        tiny.delete("content/es/translated.tsv");
        assertEquals(1, warnings().size(), warnings()::toString);
        assertTrue(warnings().get(0).startsWith("content/es/translated.tsv:1: "), warnings()::toString);
        assertEquals(0, state().current());
    }

    @Test
    void synonymsAreEachLanguagesOwnAndTopicsTheOriginals() {
        tiny.replace(ES, ", also: \"scv; rear hydraulics\", topic: rear-remotes}", ", also: \"salida\"}");
        assertEquals(List.of(), warnings());
        var word = tiny.readGood().getLibrary("es").findWord("remote").orElseThrow();
        assertEquals(List.of("salida"), word.also());
        assertEquals("rear-remotes", word.topic().orElseThrow().value());
    }

    @Test
    void aLanguageThatIsNotOfferedIsOnlyCounted() {
        tiny.replace("kiosk-config/showroom.yaml", "languages: [en, es]", "languages: [en]")
                .replace(ES, "  parked: {name: \"parked\"}\n", "")
                .replace(EN, "at {place}", "right at {place}");
        assertEquals(List.of(), warnings());
        assertEquals(1, state().missing());
        assertEquals(1, state().stale());
    }

    @Test
    void whatIsKeptIsSortedAndDropsWhatIsGone() {
        List<String> lines = tiny.text("content/es/translated.tsv").lines().skip(1).toList();
        assertEquals(lines.stream().sorted().toList(), lines);
        tiny.replace(EN, "units-shown:", "units-seen:").replace(ES, "units-shown:", "units-seen:");
        assertTrue(warnings().stream().anyMatch(each -> each.contains("there is no [units-shown] any more")),
                warnings()::toString);
        accept();
        assertEquals(List.of(), warnings());
        assertFalse(tiny.text("content/es/translated.tsv").contains("units-shown"));
        tiny.write("content/es/translated.tsv", tiny.text("content/es/translated.tsv") + "<<<<<<< here\n");
        assertEquals(1, problems().size(), problems()::toString);
    }

    @Test
    void theFirstLanguageNeedNotBeTheOriginal() {
        tiny.replace("kiosk-config/showroom.yaml", "languages: [en, es]", "languages: [es, en]");
        assertEquals(List.of(), warnings());
        assertEquals(Set.of("es"), tiny.readGood().translations().keySet());
        assertEquals("Patio", tiny.readGood().getTexts("es").get("showroom.strip"));
    }
}
