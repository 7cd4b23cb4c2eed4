package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Breaks several files at once, or a whole file. */
class BrokenContentTest {
    private static final String FEATURES = "content/features.yaml";
    private static final String ATTACHMENTS = "content/attachments.yaml";
    private static final String JOBS = "content/jobs.yaml";
    private static final String QUESTIONS = "content/questions.yaml";
    private static final String WORDS = "content/en/words.yaml";
    private static final String ARTICLE = "content/en/explainers/loader.md";
    private static final String PRICES = "kiosk-config/prices.csv";
    private static final String STOCK = "kiosk-config/stock.csv";

    @TempDir
    private Path folder;

    @Test
    void missingWordsAreNamedAtTheRecordThatNeedsThem() {
        TinyContent tiny = TinyContent.copyTo(folder)
                .replace(WORDS, "  rear-tool-on: {name: \"with a tool behind\"}\n", "");
        Problem problem = TinyContent.problems(tiny.read()).get(0);
        assertEquals("content/states.yaml:2: there are no words for [state.rear-tool-on.name] in language [en]; "
                + "add them to a file of the folder en", problem.toString());
    }

    @Test
    void severalBrokenFilesAreAllNamedInOneRunInOrder() {
        TinyContent tiny = TinyContent.copyTo(folder)
                .replace(STOCK, "plate,1", "plank,1")
                .replace(STOCK, "12900", "-1")
                .replace(PRICES, "coupler-kit,,300,700", "coupler-kit,,700,300")
                .replace(FEATURES, "operator-station", "operator-seat")
                .replace(FEATURES, "  count: 3", "  cuont: 3")
                .replace(ARTICLE, "(word:remote)", "(word:nothing)");
        List<String> places =
                TinyContent.problems(tiny.read()).stream().map(problem -> problem.place().toString()).toList();
        assertEquals(List.of(
                "content/en/explainers/loader.md:12",
                "content/features.yaml:15",
                "content/features.yaml:19",
                "kiosk-config/prices.csv:2",
                "kiosk-config/stock.csv:2",
                "kiosk-config/stock.csv:4"), places);
    }

    @Test
    void aFileThatCannotBeReadIsNamedAloneNotAllThatNamesWhatIsInIt() {
        for (String file : TinyContent.copyTo(folder).files()) {
            var tiny = new TinyContent(folder);
            byte[] before = tiny.bytes(file);
            byte[] latin = "caf\u00e9".getBytes(StandardCharsets.ISO_8859_1);
            tiny.write(file, latin);
            List<Problem> problems = TinyContent.problems(tiny.read());
            assertEquals(List.of(new Problem(new Place(file, 1), "these bytes are not UTF-8 text",
                    "save the file with the encoding UTF-8")), problems);
            tiny.write(file, before);
        }
    }

    @Test
    void aFileThatIsMissingIsNamed() {
        TinyContent tiny = TinyContent.copyTo(folder).delete(QUESTIONS).delete(PRICES);
        assertEquals(
                List.of("content/questions.yaml:1: there is no such file; create it",
                        "kiosk-config/prices.csv:1: there is no such file; create it"),
                TinyContent.problems(tiny.read()).stream().map(Problem::toString).toList());
    }

    @Test
    void aFeatureWithoutArticleAndAnItemWithoutPriceAreNamedWhereTheyAreDeclared() {
        TinyContent tiny = TinyContent.copyTo(folder)
                .delete("content/en/explainers/roll-bar.md")
                .replace(PRICES, "pulled-mower,,,,1500,3000\n", "")
                .replace(PRICES, "worn-tires,,,,300,800\n", "worn-tires,small,,,300,800\n");
        List<Problem> problems = TinyContent.problems(tiny.read());
        assertTrue(problems.stream().anyMatch(problem -> problem.place().equals(new Place(FEATURES, 14))
                && problem.what().contains("no article on [roll-bar]")), problems::toString);
        assertTrue(problems.stream().anyMatch(problem -> problem.place().equals(new Place(ATTACHMENTS, 8))
                && problem.what().contains("[pulled-mower] has no price")), problems::toString);
        assertTrue(problems.stream().anyMatch(problem -> problem.place().equals(new Place("content/condition.yaml", 1))
                && problem.what().contains("no later price for [subcompact]")), problems::toString);
    }

    @Test
    void aFileThatIsTooLargeIsNotRead() {
        TinyContent tiny = TinyContent.copyTo(folder).write(JOBS, "#".repeat((int) SourceFile.MOST_BYTES + 1));
        List<Problem> problems = TinyContent.problems(tiny.read());
        assertEquals(1, problems.size(), problems::toString);
        assertTrue(problems.get(0).toString().startsWith(JOBS + ":1: the file has 4000001 bytes"), problems::toString);
    }

    @Test
    void aFolderThatIsMissingIsNamed() {
        var reading = new ContentReader().read(
                folder.resolve("nowhere"), folder.resolve("nowhere-else"), Optional.empty());
        assertEquals(List.of("nowhere:1: there is no such folder; create it or name another one",
                        "nowhere-else:1: there is no such folder; create it or name another one"),
                TinyContent.problems(reading).stream().map(Problem::toString).toList());
    }
}
