package fencerow.content;

import static fencerow.content.Break.broken;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks the writing of a YAML file itself. */
class BrokenYamlTest {
    private static final String JOBS = "content/jobs.yaml";

    @TempDir
    private Path folder;

    static List<Break> yamlItself() {
        return List.of(
                broken(JOBS, "  work: loads", "  work: [loads", "this is no YAML").at("other-ways"),
                broken(JOBS, "  work: loads", "\twork: loads", "this is no YAML"),
                broken(JOBS, "  work: lawn", "  work: &x lawn", "an anchor (&) is used"),
                broken(JOBS, "  work: lawn", "  work: *x", "an alias (*) is used"),
                broken(JOBS, "  work: lawn", "  work: !!str lawn", "a tag (!) is used"),
                broken(JOBS, "mow-lawn:", "---\nmow-lawn:", "a second document starts").at("---"),
                broken(JOBS, "  work: lawn", "  work: " + "[".repeat(50) + "]".repeat(50), "levels are nested"),
                broken(JOBS, "  work: lawn", "  work: la\u0007wn", "invisible character (number 7)"),
                broken(JOBS, "  work: lawn", "  work:", "nothing is written here").at("  work:\n"),
                broken(JOBS, "  work: lawn", "  work: [lawn]", "a single value belongs here"),
                broken(JOBS, "[hire]", "hire", "a list belongs here").at("other-ways"),
                broken(JOBS, "  work: lawn", "  work: lawn\n  work: snow", "the key [work] is already there"),
                broken(JOBS, "  work: lawn", "  wrok: lawn", "did you mean [work]?"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("yamlItself")
    void itIsNamedWithItsLineAndNothingElseIs(Break each) {
        each.check(folder);
    }
}
