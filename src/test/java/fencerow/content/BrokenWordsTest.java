package fencerow.content;

import static fencerow.content.Break.broken;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks words and articles, one at a time. */
class BrokenWordsTest {
    private static final String FIGURES = "content/en/figures.yaml";
    private static final String WORDS = "content/en/words.yaml";
    private static final String ARTICLE = "content/en/explainers/loader.md";
    private static final String RESALE = "content/en/explainers/resale.md";

    @TempDir
    private Path folder;

    static List<Break> words() {
        return List.of(
                broken(WORDS, "  rear-tool-on: {name: \"with a tool behind\"}\n", "",
                        "no words for [state.rear-tool-on.name]"),
                broken(WORDS, "  port-block: {name: \"an oil port\", demand", "  port-block: {name: \"an oil port\", "
                        + "command", "no words for [capability.port-block.demand]"),
                broken(WORDS, "{no: \"Seldom.\"}", "{yes: \"Seldom.\"}",
                        "no words for [quiz.rear-remotes.option.comes-with-it.no]"),
                broken(FIGURES, "{name: \"wheelbase\", demand", "{name: \"wheelbase\", command",
                        "no words for [capability.wheelbase.demand]"),
                broken(WORDS, "  hired: {label", "  hired: {lable", "no words for [question.tools.option.hired.label]"),
                broken(WORDS, "hire: \"Hire a forklift\"", "contract: \"Hire a forklift\"",
                        "no words for [job.move-pallets.hire]"),
                broken(WORDS, "{plate: \"Plate\", hook", "{plate: \"Plate\", hock",
                        "no words for [feature.quick-attach.kind.hook]"),
                broken(WORDS, "bad: \"Bent.\"", "worse: \"Bent.\"", "no words for [line.roll-bar-sound.bad]"),
                broken(WORDS, "means: \"A pair", "mean: \"A pair", "no words for [glossary.remote.means]"),
                broken(WORDS, "{count, plural, one {# unit}", "{count, plural, one {# unit", "a flaw in its braces"),
                broken(WORDS, "at {place}", "at {0}", "a flaw in its braces"),
                broken(WORDS, "topic: rear-remotes", "topic: rear-remote", "did you mean [rear-remotes]?"),
                broken(WORDS, "units-shown:", "Units_Shown:", "is not spelt as one"),
                broken(ARTICLE, "topic: loader", "topic: loder", "is not the name of the file"),
                broken(ARTICLE, "stop: loader", "stop: lodger", "[lodger] is none of the words"),
                broken(ARTICLE, "related: [quick-attach]", "related: [quick-atach]", "did you mean [quick-attach]?"),
                broken(ARTICLE, "quiz: loader", "quiz: loaders", "did you mean [loader]?"),
                broken(ARTICLE, "cautions: [loader]", "cautions: [slope]", "no caution [slope]"),
                broken(ARTICLE, "summary: What it is.\n", "", "[summary] is missing").at("topic: loader"),
                broken(ARTICLE, "(topic:resale)", "(topic:resail)", "did you mean [resale]?"),
                broken(ARTICLE, "(word:remote)", "(word:remotes)", "did you mean [remote]?"),
                broken(ARTICLE, "(topic:resale)", "(https://example.org)", "link to topic:... or word:... only"),
                broken(ARTICLE, "Some **strong**", "Some <b>strong</b>", "HTML cannot be shown"),
                broken(ARTICLE, "- one point", "<div>one</div>\n\n- one point", "HTML cannot be shown").at("<div>"),
                broken(ARTICLE, "Some **strong**", "![alt](p.png) **strong**", "a picture cannot be shown"),
                broken(ARTICLE, "- another", "- another\n  - nested", "other than one run of words").at("- another"),
                broken(ARTICLE, "## What it is", "# What it is", "another level than ##"),
                broken(ARTICLE, "1. first", "> first", "a quotation (>) cannot be shown"),
                broken(ARTICLE, "{price}", "Costs {price}.", "a brace stands in the text"),
                broken(ARTICLE, "---\n## What", "## What", "does not start with its particulars").at("---"),
                broken(RESALE, "They prove care.", "{offering}", "an article that is about no feature"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("words")
    void itIsNamedWithItsLineAndNothingElseIs(Break each) {
        each.check(folder);
    }
}
