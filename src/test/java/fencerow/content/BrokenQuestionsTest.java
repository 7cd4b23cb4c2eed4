package fencerow.content;

import static fencerow.content.Break.broken;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks questions, quiz and checklist, one at a time. */
class BrokenQuestionsTest {
    private static final String QUESTIONS = "content/questions.yaml";
    private static final String QUIZ = "content/quiz.yaml";
    private static final String MORE_QUIZ = "content/quiz-more.yaml";
    private static final String LINES = "content/checklist.yaml";

    @TempDir
    private Path folder;

    static List<Break> questions() {
        return List.of(
                broken(QUESTIONS, "- id: budget\n",
                        "- id: jobs\n  choose: one\n  options: [{id: a}, {id: b}]\n- id: budget\n",
                        "the question [jobs] is already there").at("- id: jobs\n  choose: one"),
                broken(QUESTIONS, "when: {jobs: [move-pallets]}", "when: {job: [move-pallets]}", "no question [job]"),
                broken(QUESTIONS, "when: {jobs: [move-pallets]}", "when: {jobs: [move-palets]}",
                        "did you mean [jobs/move-pallets]?"),
                broken(QUESTIONS, "dimension: mass", "dimension: heaviness", "[heaviness] is none of the words"),
                broken(QUESTIONS, "from: 200 lb", "from: 200 in", "unit of length"),
                broken(QUESTIONS, "  from: 5 ft", "  from: 17 ft", "is no scale").at("  from: 17 ft"),
                broken(QUESTIONS, "{value: 7 ft, share: 1}", "{value: 70 ft, share: 1}",
                        "lies outside").at("  from: 5 ft"),
                broken(QUESTIONS, "{of: height, at-most", "{of: loader-mass, at-most", "do not measure the same"),
                broken(QUESTIONS, "{of: hitch-weight, at-least: counterweight",
                        "{of: loader-height, at-least: counterweight", "do not measure the same"),
                broken(QUESTIONS, "{of: mowing-width, at-least: mowing-width}",
                        "{of: hitch-weight, at-least: mowing-width}", "do not measure the same"),
                broken(QUESTIONS, "in: parked}", "in: garage}", "no working state [garage]"),
                broken(QUESTIONS, "weight: 3", "weight: 9", "[9] is out of range"),
                broken(QUESTIONS, "owns: [pallet-forks]", "owns: [pallet-fork]", "did you mean [pallet-forks]?"),
                broken(QUESTIONS, "hires: [mow-lawn]", "hires: [mow]", "no job [mow]"),
                broken(QUESTIONS, "{id: quick, wish: [{of: quick-attach.plate, at-least: 1",
                        "{id: quick, wish: [{of: quick-attach.plate, at-least: answer", "no amount to go by"),
                broken(QUESTIONS, "{id: quick, ", "{id: quick, about: resail, ", "did you mean [resale]?"),
                broken(QUESTIONS, "choose: money", "choose: cash", "[cash] is none of the words"),
                broken(QUESTIONS, "  choose: jobs", "  choose: jobs\n  step: 3 in", "does not go with this way"),
                broken(QUIZ, "feature: roll-bar", "feature: roll-bars", "did you mean [roll-bar]?"),
                broken(QUIZ, "key: comes-with-it", "key: comes", "is none of the options"),
                broken(QUIZ, "wrong: 0.55", "wrong: 1.5", "[1.5] is out of range"),
                broken(MORE_QUIZ, "topic: resale", "topic: resail", "did you mean [resale]?"),
                broken(MORE_QUIZ, ", say-nothing]", "]", "give exactly three").at("- id: check-resale"),
                broken(LINES, "- id: owner-known", "- id: bills-kept", "[bills-kept] is already there")
                        .at("- id: bills-kept\n  stop: papers\n  for: used"),
                broken(LINES, "  for: used", "  for: user", "[user] is none of the words"),
                broken(LINES, "{low: 100, high: 900}", "{low: 900, high: 100}", "is above high"),
                broken(LINES, "{low: 100, high: 900}", "{low: -100, high: 900}", "[-100] is out of range"),
                broken(LINES, "  topic: resale", "  topic: resell", "did you mean [resale]?"),
                broken(LINES, "  job-at-stake: true\n", "", "nothing of what is at stake").at("- id: owner-known"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("questions")
    void itIsNamedWithItsLineAndNothingElseIs(Break each) {
        each.check(folder);
    }
}
