package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What looks wrong and can be used all the same. */
class WarningsTest {
    @TempDir
    private Path folder;

    private void expect(String warning, TinyContent tiny) {
        Reading<Content> reading = tiny.read();
        assertEquals(List.of(), TinyContent.problems(reading));
        List<String> warnings = reading.warnings().stream().map(Problem::toString).toList();
        assertEquals(1, warnings.size(), warnings::toString);
        assertTrue(warnings.get(0).startsWith(warning), warnings::toString);
    }

    private TinyContent tiny() {
        return TinyContent.copyTo(folder);
    }

    @Test
    void wordsThatNothingAsksFor() {
        expect("content/en/words.yaml:56: nothing asks for the words [state.parkd.name]; "
                        + "there is no working state [parkd]; did you mean [parked]?",
                tiny().replace("content/en/words.yaml", "  parked: {name", "  parkd: {name: \"x\"}\n  parked: {name"));
    }

    @Test
    void anArticleThatIsHardToRead() {
        expect("content/en/explainers/resale.md:1: [explainers/resale] takes grade ",
                tiny().replace("content/en/explainers/resale.md", "They prove care.",
                        "Comprehensive documentation demonstrates conscientious ownership responsibility."));
    }

    @Test
    void aSentenceThatIsTooLong() {
        expect("content/en/explainers/resale.md:1: [explainers/resale] has a sentence of 40 words",
                tiny().replace("content/en/explainers/resale.md", "They prove care.",
                        "It is so. ".repeat(20) + "They say so ".repeat(13).strip() + " now."));
    }

    @Test
    void tradeWordsThatAreNamedAreNotHardOnes() {
        TinyContent tiny = tiny().replace("content/en/explainers/resale.md", "They prove care.",
                "Comprehensive documentation demonstrates care.");
        assertEquals(1, tiny.read().warnings().size());
        tiny.write("content/en/trade-words.txt", "# hard ones\ncomprehensive\ndocumentation\ndemonstrates\n");
        assertEquals(List.of(), tiny.read().warnings());
    }

    @Test
    void aFeatureOfferedExtraThatNothingGives() {
        expect("content/features.yaml:14: the feature [roll-bar] is offered extra on utility, and no add-on",
                tiny().replace("content/features.yaml", "large: included, utility: included",
                        "large: included, utility: extra"));
    }

    @Test
    void aFeatureWithoutQuizQuestion() {
        expect("content/features.yaml:14: no quiz question is about the feature [roll-bar]",
                tiny().replace("content/quiz.yaml",
                                """
                                - id: roll-bar
                                  kind: belief
                                  feature: roll-bar
                                  key: comes-with-it
                                  wrong: 0.3
                                """,
                                "")
                        .replace("content/en/explainers/roll-bar.md", "quiz: roll-bar\n", "")
                        .replace("content/en/words.yaml", "  roll-bar:\n    ask: \"Does it come with a roll bar?\"\n"
                                + "    right: \"It does.\"\n    option: {can-be-added: {no: \"It is there.\"}, "
                                + "cannot-be-added: {no: \"It is there.\"}}\n", ""));
    }

    @Test
    void aFeatureWithoutChecklistLine() {
        expect("content/features.yaml:17: no checklist line is about the feature [rear-remotes]",
                tiny().replace("content/checklist.yaml", "- id: rear-remotes\n  feature: rear-remotes\n", ""));
    }

    @Test
    void figuresThatAreHardlyPossible() {
        expect("content/models.yaml:13: [wheelbase] of [570 mm] is hardly possible",
                tiny().replace("content/models.yaml", "57 in", "570 mm"));
    }

    @Test
    void figuresThatContradictOneAnother() {
        expect("content/models.yaml:1: [pto-power] is above [engine-power]",
                tiny().replace("content/models.yaml", "18.5 hp", "28.5 hp"));
    }

    @Test
    void axlesThatDoNotCarryTheTractor() {
        expect("content/models.yaml:1: the two axles carry 113 % of the tractor's mass",
                tiny().replace("content/models.yaml", "rear-axle-mass: 900 lb", "rear-axle-mass: 1100 lb"));
    }

    @Test
    void aYearInWhichTheModelWasNotMade() {
        expect("kiosk-config/stock.csv:4: column [year]: [wren-24] was not made in 2009",
                tiny().replace("kiosk-config/stock.csv", "used,2019", "used,2009"));
    }

    @Test
    void equipmentThatTheModelCanNeverHave() {
        expect("kiosk-config/stock.csv:2: column [rear-remotes]: [wren-24] can never have it",
                tiny().replace("content/models.yaml", "offering: {rear-remotes: extra}",
                        "offering: {rear-remotes: never}"));
    }

    @Test
    void aPriceForAClassThatTheItemIsNotMadeFor() {
        expect("kiosk-config/prices.csv:4: column [class]: [remote-kit] is not made for [utility]",
                tiny().replace("kiosk-config/prices.csv", "remote-kit,small", "remote-kit,utility"));
    }

    @Test
    void aYearlyPriceThatTheJobDoesNotName() {
        expect("content/jobs.yaml:5: hire.csv prices [contract] for the job [mow-lawn]",
                tiny().replace("kiosk-config/hire.csv", "move-pallets,hire,250,700\n",
                                "move-pallets,hire,250,700\nmow-lawn,contract,1,2\n")
                        .replace("content/en/words.yaml", "want: \"mow the lawn\"",
                                "want: \"mow the lawn\", contract: \"Pay for it\""));
    }

    @Test
    void aFileThatNothingReads() {
        expect("content/feature.yaml:1: nothing reads this file", tiny().write("content/feature.yaml", "a: b"));
    }

    @Test
    void aLineTooLongToReadStandingUp() {
        expect("content/en/words.yaml:14: [feature.quick-attach.check] has 20 words; use at most 19",
                tiny().replace("content/en/words.yaml", "\"Look at the quick-attach coupler.\"",
                                "\"" + "word ".repeat(20).strip() + "\""));
    }
}
