package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks the tiny showroom's files in every way that a file can be broken, one at a time and several at once. */
class BrokenContentTest {
    private static final String FEATURES = "content/features.yaml";
    private static final String ADD_ONS = "content/add-ons.yaml";
    private static final String ATTACHMENTS = "content/attachments.yaml";
    private static final String JOBS = "content/jobs.yaml";
    private static final String MODELS = "content/models.yaml";
    private static final String QUESTIONS = "content/questions.yaml";
    private static final String QUIZ = "content/quiz.yaml";
    private static final String MORE_QUIZ = "content/quiz-more.yaml";
    private static final String LINES = "content/checklist.yaml";
    private static final String CAPABILITIES = "content/capabilities.yaml";
    private static final String WORDS = "content/en/words.yaml";
    private static final String ARTICLE = "content/en/explainers/loader.md";
    private static final String RESALE = "content/en/explainers/resale.md";
    private static final String SHOWROOM = "kiosk-config/showroom.yaml";
    private static final String PRICES = "kiosk-config/prices.csv";
    private static final String HIRE = "kiosk-config/hire.csv";
    private static final String STOCK = "kiosk-config/stock.csv";
    private static final String ALIASES = "kiosk-config/aliases.txt";

    @TempDir
    private Path folder;

    /**
     * One way to break a file.
     *
     * @param at   what stands on the line that is named
     * @param says part of what is said of it
     */
    private record Break(String file, String old, String now, String at, String says) {
        static Break of(String file, String old, String now, String says) {
            String line = now.strip().lines().reduce((first, last) -> last).orElse(now);
            return new Break(file, old, now, line, says);
        }

        Break at(String text) {
            return new Break(file, old, now, text, says);
        }

        @Override
        public String toString() {
            return file + ": " + says;
        }
    }

    static List<Break> yamlItself() {
        return List.of(
                Break.of(JOBS, "  work: loads", "  work: [loads", "this is no YAML").at("other-ways"),
                Break.of(JOBS, "  work: loads", "\twork: loads", "this is no YAML"),
                Break.of(JOBS, "  work: lawn", "  work: &x lawn", "an anchor (&) is used"),
                Break.of(JOBS, "  work: lawn", "  work: *x", "an alias (*) is used"),
                Break.of(JOBS, "  work: lawn", "  work: !!str lawn", "a tag (!) is used"),
                Break.of(JOBS, "mow-lawn:", "---\nmow-lawn:", "a second document starts").at("---"),
                Break.of(JOBS, "  work: lawn", "  work: " + "[".repeat(50) + "]".repeat(50), "levels are nested"),
                Break.of(JOBS, "  work: lawn", "  work: la\u0007wn", "invisible character (number 7)"),
                Break.of(JOBS, "  work: lawn", "  work:", "nothing is written here").at("  work:\n"),
                Break.of(JOBS, "  work: lawn", "  work: [lawn]", "a single value belongs here"),
                Break.of(JOBS, "[hire]", "hire", "a list belongs here").at("other-ways"),
                Break.of(JOBS, "  work: lawn", "  work: lawn\n  work: snow", "the key [work] is already there"),
                Break.of(JOBS, "  work: lawn", "  wrok: lawn", "did you mean [work]?"));
    }

    static List<Break> catalogue() {
        return List.of(
                Break.of(CAPABILITIES, "quick-coupler: {dimension: count}", "quick-coupler: {dimension: wait}",
                        "[wait] is none of the words"),
                Break.of(CAPABILITIES, "[tractor-mass, loader-mass]", "[tractor-mass, wheelbase]",
                        "measures MASS but starts from [wheelbase]"),
                Break.of(CAPABILITIES, "port-block: {dimension: count, supply: 1}",
                        "port-block: {dimension: count, supply: -1}", "[-1] is out of range"),
                Break.of(CAPABILITIES, "hitch-weight: {", "height: {dimension: length}\nhitch-weight: {",
                        "[height] is a figure of the data sheet already").at("height: {"),
                Break.of(LINES, "- id: owner-known", "- id: Owner Known", "[Owner Known] is not an id"),
                Break.of(FEATURES, "roll-bar:\n", "loader: {}\nroll-bar:\n", "the key [loader] is already there")
                        .at("loader: {}"),
                Break.of(FEATURES, "operator-station", "operators-station", "none of the words"),
                Break.of(FEATURES, "included, utility: included}", "included}", "[utility] is missing"),
                Break.of(FEATURES, "gives: [quick-coupler]", "gives: [quick-copler]", "did you mean [quick-coupler]?"),
                Break.of(FEATURES, "    plate: [{", "    plait: [{", "has no kind [plait]"),
                Break.of(FEATURES, "  count: 3", "  count: many", "[many] is no whole number"),
                Break.of(FEATURES, "  hurts: true", "  hurts: maybe", "neither yes nor no"),
                Break.of(FEATURES, "amount: -90 lb", "amount: -90 in", "unit of length"),
                Break.of(ADD_ONS, "gives: [quick-attach.plate]", "gives: [quick-attach.plank]", "no kind [plank]"),
                Break.of(ADD_ONS, "  excludes: [hose-kit]", "  excludes: [hoses-kit]", "did you mean [hose-kit]?"),
                Break.of(ADD_ONS, "{low: 1, high: 3}", "{low: 3, high: 1}", "fitting hours 3.0 to 1.0").at("{low: 3"),
                Break.of(ADD_ONS, "classes: [subcompact, small, mid, large]", "classes: [tiny]", "[tiny] is none of"),
                Break.of(ADD_ONS, "by: any-shop", "by: anyone", "[anyone] is none of the words"),
                Break.of(ADD_ONS, "{of: rear-remotes, at-most: 2}", "{of: rear-remotes}", "either at-least or at-most"),
                Break.of(ADD_ONS, "stopgap-hours: 20", "stopgap-hours: 0", "[0] is out of range"),
                Break.of(ATTACHMENTS, "does: [mow-lawn]", "does: [mow-lawns]", "did you mean [mow-lawn]?"),
                Break.of(ATTACHMENTS, "state: rear-tool-on", "state: rear-tool", "no working state [rear-tool]"),
                Break.of(ATTACHMENTS, "mass: 450 lb", "mass: 450 pounders", "no unit that is known"),
                Break.of(ATTACHMENTS, "width: 60 in", "width: -60 in", "less than nothing"),
                Break.of(ATTACHMENTS, "at-least: 18 hp", "at-least: 18 lb", "unit of mass"),
                Break.of(ATTACHMENTS, "- {of: pto-power, at-least: 18 hp}", "- pto-power", "needs an amount"),
                Break.of(ATTACHMENTS, "in: [loader-work]}]\n  needs", "in: [loader-wurk]}]\n  needs",
                        "no working state [loader-wurk]").at("loader-wurk"),
                Break.of(JOBS, "cautions: [loader]", "cautions: [louder]", "did you mean [loader]?"),
                Break.of(JOBS, "other-ways: [hire]", "other-ways: [hire, contract]", "no price a year for [contract]")
                        .at("move-pallets:"));
    }

    static List<Break> models() {
        return List.of(
                Break.of(MODELS, "class: subcompact", "class: sub", "[sub] is none of the words"),
                Break.of(MODELS, "    wheelbase: 57 in\n", "", "the figure [wheelbase] is missing").at("    engine-power"),
                Break.of(MODELS, "wheelbase: 57 in", "wheelbase: 57 lb", "unit of mass"),
                Break.of(MODELS, "wheelbase: 57 in", "weelbase: 57 in", "did you mean [wheelbase]?"),
                Break.of(MODELS, "{from: 2015, to: 2030}", "{from: 2030, to: 2015}", "first year comes after the last"),
                Break.of(MODELS, "loader: yes,", "loader: perhaps,", "does not say what of [loader]"),
                Break.of(MODELS, "loader: yes,", "loder: yes,", "did you mean [loader]?"),
                Break.of(MODELS, "offering: {rear-remotes: extra}", "offering: {rear-remote: extra}",
                        "did you mean [rear-remotes]?"),
                Break.of(MODELS, "offering: {rear-remotes: extra}", "offering: {rear-remotes: ever}", "[ever] is none"),
                Break.of(MODELS, "limits: {rear-remotes: 1}", "limits: {rear-remotes: 9}", "[9] is out of range"));
    }

    static List<Break> questions() {
        return List.of(
                Break.of(QUESTIONS, "- id: budget\n", "- id: jobs\n  choose: one\n  options: [{id: a}, {id: b}]\n- id: budget\n",
                        "the question [jobs] is already there").at("- id: jobs\n  choose: one"),
                Break.of(QUESTIONS, "when: {jobs: [move-pallets]}", "when: {job: [move-pallets]}", "no question [job]"),
                Break.of(QUESTIONS, "when: {jobs: [move-pallets]}", "when: {jobs: [move-palets]}",
                        "did you mean [jobs/move-pallets]?"),
                Break.of(QUESTIONS, "dimension: mass", "dimension: heaviness", "[heaviness] is none of the words"),
                Break.of(QUESTIONS, "from: 200 lb", "from: 200 in", "unit of length"),
                Break.of(QUESTIONS, "  from: 5 ft", "  from: 17 ft", "is no scale").at("  from: 17 ft"),
                Break.of(QUESTIONS, "{value: 7 ft, share: 1}", "{value: 70 ft, share: 1}", "lies outside").at("  from: 5 ft"),
                Break.of(QUESTIONS, "{of: height, at-most", "{of: loader-mass, at-most", "do not measure the same"),
                Break.of(QUESTIONS, "{of: hitch-weight, at-least: counterweight",
                        "{of: loader-height, at-least: counterweight", "do not measure the same"),
                Break.of(QUESTIONS, "{of: mowing-width, at-least: mowing-width}",
                        "{of: hitch-weight, at-least: mowing-width}", "do not measure the same"),
                Break.of(QUESTIONS, "in: parked}", "in: garage}", "no working state [garage]"),
                Break.of(QUESTIONS, "weight: 3", "weight: 9", "[9] is out of range"),
                Break.of(QUESTIONS, "owns: [pallet-forks]", "owns: [pallet-fork]", "did you mean [pallet-forks]?"),
                Break.of(QUESTIONS, "hires: [mow-lawn]", "hires: [mow]", "no job [mow]"),
                Break.of(QUESTIONS, "{id: quick, wish: [{of: quick-attach.plate, at-least: 1",
                        "{id: quick, wish: [{of: quick-attach.plate, at-least: answer", "no amount to go by"),
                Break.of(QUESTIONS, "choose: money", "choose: cash", "[cash] is none of the words"),
                Break.of(QUESTIONS, "  choose: jobs", "  choose: jobs\n  step: 3 in", "does not go with this way"),
                Break.of(QUIZ, "feature: roll-bar", "feature: roll-bars", "did you mean [roll-bar]?"),
                Break.of(QUIZ, "key: comes-with-it", "key: comes", "is none of the options"),
                Break.of(QUIZ, "wrong: 0.55", "wrong: 1.5", "[1.5] is out of range"),
                Break.of(MORE_QUIZ, "topic: resale", "topic: resail", "did you mean [resale]?"),
                Break.of(MORE_QUIZ, ", say-nothing]", "]", "give exactly three").at("- id: check-resale"),
                Break.of(LINES, "- id: owner-known", "- id: bills-kept", "[bills-kept] is already there")
                        .at("- id: bills-kept\n  stop: papers\n  for: used"),
                Break.of(LINES, "  for: used", "  for: user", "[user] is none of the words"),
                Break.of(LINES, "{low: 100, high: 900}", "{low: 900, high: 100}", "is above high"),
                Break.of(LINES, "{low: 100, high: 900}", "{low: -100, high: 900}", "[-100] is out of range"),
                Break.of(LINES, "  topic: resale", "  topic: resell", "did you mean [resale]?"),
                Break.of(LINES, "  job-at-stake: true\n", "", "nothing of what is at stake").at("- id: owner-known"));
    }

    static List<Break> words() {
        return List.of(
                Break.of(WORDS, "  rear-tool-on: {name: \"with a tool behind\"}\n", "", "[state.rear-tool-on.name]"),
                Break.of(WORDS, "  port-block: {name: \"an oil port\", demand", "  port-block: {name: \"an oil port\", "
                        + "command", "[capability.port-block.demand]"),
                Break.of(WORDS, "{no: \"Seldom.\"}", "{yes: \"Seldom.\"}", "[quiz.rear-remotes.option.comes-with-it.no]"),
                Break.of(WORDS, "  hired: {label", "  hired: {lable", "[question.tools.option.hired.label]"),
                Break.of(WORDS, "hire: \"Hire a forklift\"", "contract: \"Hire a forklift\"", "[job.move-pallets.hire]"),
                Break.of(WORDS, "{plate: \"Plate\", hook", "{plate: \"Plate\", hock", "[feature.quick-attach.kind.hook]"),
                Break.of(WORDS, "bad: \"Bent.\"", "worse: \"Bent.\"", "[line.roll-bar-sound.bad]"),
                Break.of(WORDS, "means: \"A pair", "mean: \"A pair", "[glossary.remote.means]"),
                Break.of(WORDS, "{count, plural, one {# unit}", "{count, plural, one {# unit", "a flaw in its braces"),
                Break.of(WORDS, "at {place}", "at {0}", "a flaw in its braces"),
                Break.of(WORDS, "topic: rear-remotes", "topic: rear-remote", "did you mean [rear-remotes]?"),
                Break.of(WORDS, "units-shown:", "Units_Shown:", "is not spelt as one"),
                Break.of(ARTICLE, "topic: loader", "topic: loder", "is not the name of the file"),
                Break.of(ARTICLE, "stop: loader", "stop: lodger", "[lodger] is none of the words"),
                Break.of(ARTICLE, "related: [quick-attach]", "related: [quick-atach]", "did you mean [quick-attach]?"),
                Break.of(ARTICLE, "quiz: loader", "quiz: loaders", "did you mean [loader]?"),
                Break.of(ARTICLE, "cautions: [loader]", "cautions: [slope]", "no caution [slope]"),
                Break.of(ARTICLE, "summary: What it is.\n", "", "[summary] is missing").at("topic: loader"),
                Break.of(ARTICLE, "(topic:resale)", "(topic:resail)", "did you mean [resale]?"),
                Break.of(ARTICLE, "(word:remote)", "(word:remotes)", "did you mean [remote]?"),
                Break.of(ARTICLE, "(topic:resale)", "(https://example.org)", "link to topic:... or word:... only"),
                Break.of(ARTICLE, "Some **strong**", "Some <b>strong</b>", "HTML cannot be shown"),
                Break.of(ARTICLE, "- one point", "<div>one</div>\n\n- one point", "HTML cannot be shown").at("<div>"),
                Break.of(ARTICLE, "Some **strong**", "![alt](p.png) **strong**", "a picture cannot be shown"),
                Break.of(ARTICLE, "- another", "- another\n  - nested", "other than one run of words").at("- another"),
                Break.of(ARTICLE, "## What it is", "# What it is", "another level than ##"),
                Break.of(ARTICLE, "1. first", "> first", "a quotation (>) cannot be shown"),
                Break.of(ARTICLE, "{price}", "Costs {price}.", "a brace stands in the text"),
                Break.of(ARTICLE, "---\n## What", "## What", "does not start with its particulars").at("---"),
                Break.of(RESALE, "They prove care.", "{offering}", "an article that is about no feature"));
    }

    static List<Break> configuration() {
        return List.of(
                Break.of(SHOWROOM, "languages: [en]", "languages: [english!]", "[english!] is no language"),
                Break.of(SHOWROOM, "languages: [en]", "languages: []", "no language is offered").at("name:"),
                Break.of(SHOWROOM, "measures: us", "measures: uk", "[uk] is none of the words"),
                Break.of(SHOWROOM, "warn-after: 75 s", "warn-after: 5 s", "idle times 5 s"),
                Break.of(SHOWROOM, "warn-after: 75 s", "warn-after: 75", "[75] has no unit"),
                Break.of(SHOWROOM, "diagonal: 24 in", "diagonal: 2 in", "panel diagonal"),
                Break.of(SHOWROOM, "freight: 600 USD", "freight: -600 USD", "[freight] is negative"),
                Break.of(SHOWROOM, "{demo: \"2468\"}", "{demo: \"abcd\"}", "not 4 to 8 digits"),
                Break.of(SHOWROOM, "wish: 0.5", "wish: 2", "[2] is out of range"),
                Break.of(SHOWROOM, "wish: 0.5, else: 0.2", "wish: 0.1, else: 0.2", "must not rise"),
                Break.of(PRICES, "coupler-kit,,300,700", "coupler-kit,,-300,700", "column [order-low]: [-300] is negative"),
                Break.of(PRICES, "coupler-kit,,300,700", "coupler-kit,,700,300", "the low price is above the high one"),
                Break.of(PRICES, "coupler-kit,,300,700", "coupler-kit,,300,", "the cell is empty and its pair is not"),
                Break.of(PRICES, "coupler-kit,,300,700", "coupler-kit,,$300,700", "[$300] is no whole number"),
                Break.of(PRICES, "remote-kit,small", "remote-kit,smal", "[smal] is no machine class"),
                Break.of(PRICES, "remote-kit,small", "remote-kit,subcompact", "has a price for [subcompact] already")
                        .at("remote-kit,small,400,800,500,900\n".replace("small", "subcompact") + "hose"),
                Break.of(PRICES, "hose-kit,", "hose-kit,,", "the row has 7 cells"),
                Break.of(PRICES, "item,class", "item,clas", "did you mean [class]?"),
                Break.of(PRICES, "hose-kit,,,,100,200", "hose-kit,,,,\"100\"x,200", "the quotes in this row"),
                Break.of(HIRE, "move-pallets,hire", "move-palets,hire", "did you mean [move-pallets]?"),
                Break.of(HIRE, "move-pallets,hire", "move-pallets,higher", "[higher] is none of the words"),
                Break.of(STOCK, "n-1,wren-24", "n-1,wren-42", "did you mean [wren-24]?"),
                Break.of(STOCK, "n-2,wren-24", "n-1,wren-24", "the unit [n-1] is already there").at("n-1,wren-24,new,2026,0"),
                Break.of(STOCK, "plate,1", "plank,1", "column [quick-attach]: [plank] is not understood"),
                Break.of(STOCK, "plate,1", "plate,3", "takes at most 1"),
                Break.of(STOCK, "12900", "cheap", "column [asking]: [cheap] is no whole number"),
                Break.of(STOCK, "12900", "", "column [asking]: the cell is empty").at("u-1"),
                Break.of(STOCK, "orderable,60", "orderable,", "column [lead-days]").at("n-2,"),
                Break.of(STOCK, "used,2019", "old,2019", "[old] is none of the words"),
                Break.of(STOCK, "pallet-forks,worn-tires", "pallet-forc,worn-tires", "did you mean [pallet-forks]?"),
                Break.of(STOCK, "pallet-forks,worn-tires", "pallet-forks,worn-tire", "did you mean [worn-tires]?"),
                Break.of(STOCK, "quick-attach,rear-remotes", "quick-atach,rear-remotes", "did you mean [quick-attach]?"),
                Break.of(ALIASES, "scv = rear-remotes", "scv = rear-remote", "did you mean [rear-remotes]?"),
                Break.of(ALIASES, "scv = rear-remotes", "scv: rear-remotes", "no word with a topic"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"yamlItself", "catalogue", "models", "questions", "words", "configuration"})
    void aBrokenFileIsNamedWithItsLineAndNothingElseIs(Break broken) {
        TinyContent tiny = TinyContent.copyTo(folder).replace(broken.file(), broken.old(), broken.now());
        List<Problem> problems = TinyContent.problems(tiny.read());
        assertEquals(1, problems.size(), () -> "one error expected of " + broken + ", found " + problems);
        assertTrue(problems.get(0).toString().contains(broken.says()), () -> broken + ": " + problems);
        if (!broken.says().startsWith("[") || !broken.file().equals(WORDS)) {
            assertEquals(new Place(broken.file(), tiny.lineOf(broken.file(), broken.at())), problems.get(0).place());
        }
    }

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
