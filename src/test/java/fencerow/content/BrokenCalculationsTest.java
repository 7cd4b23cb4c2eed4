package fencerow.content;

import static fencerow.content.Break.broken;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks the list of calculations, one thing at a time. */
class BrokenCalculationsTest {
    private static final String FILE = "content/calculations.yaml";
    private static final String TOPICS = "  topics: [loader, resale]\n";
    private static final String FIGURE = "tractor-mass: {figure: tractor-mass}";

    @TempDir
    private Path folder;

    static List<Break> breaks() {
        return List.of(
                broken(FILE, "weight-split:", "weight-splits:", "did you mean [weight-split]?"),
                broken(FILE, "first: [tractor-mass]", "first: [tractor-mas]", "did you mean [tractor-mass]?"),
                broken(FILE, "answer: rear-axle-load", "answer: rear", "gives no [rear]"),
                broken(FILE, "topics: [loader]", "topics: [loder]", "no explainer [loder]"),
                broken(FILE, TOPICS, TOPICS + "  axles: yes\n", "gives no axle loads"),
                broken(FILE, "curve: stopped-time", "curve: stopped", "has no number [stopped]"),
                broken(FILE, FIGURE, "drive: {figure: tractor-mass}", "has no number [drive]"),
                broken(FILE, FIGURE, "tractor-mass: {figure: wheelbase}", "this is a length, the number a mass"),
                broken(FILE, FIGURE, "tractor-mass: {answer: door-height}", "this is a length, the number a mass"),
                broken(FILE, FIGURE, "tractor-mass: {answer: budgets}", "no question [budgets]"),
                broken(FILE, FIGURE, "tractor-mass: {answer: jobs}", "asks for no amount"),
                broken(FILE, FIGURE, "tractor-mass: {plus: 20 lb}", "from a figure or from an answer"),
                broken(FILE, FIGURE, "tractor-mass: {figure: tractor-mass, plus: 20 in}", "is a unit of length"),
                broken("content/en/words.yaml", "paced-speed: {ask: \"How fast?\", how", "paced-speed: {how",
                        "no words for [work.calculation.paced-speed.ask]"));
    }

    @ParameterizedTest
    @MethodSource("breaks")
    void everyMistakeIsNamedWithItsLine(Break mistake) {
        mistake.check(folder);
    }
}
