package fencerow.content;

import static fencerow.content.Break.broken;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks the files of the trade, one at a time: what there is, what it does and needs, and models. */
class BrokenCatalogueTest {
    private static final String FEATURES = "content/features.yaml";
    private static final String ADD_ONS = "content/add-ons.yaml";
    private static final String ATTACHMENTS = "content/attachments.yaml";
    private static final String JOBS = "content/jobs.yaml";
    private static final String MODELS = "content/models.yaml";
    private static final String LINES = "content/checklist.yaml";
    private static final String CAPABILITIES = "content/capabilities.yaml";

    @TempDir
    private Path folder;

    static List<Break> catalogue() {
        return List.of(
                broken(CAPABILITIES, "quick-coupler: {dimension: count}", "quick-coupler: {dimension: wait}",
                        "[wait] is none of the words"),
                broken(CAPABILITIES, "[tractor-mass, loader-mass]", "[tractor-mass, wheelbase]",
                        "measures MASS but starts from [wheelbase]"),
                broken(CAPABILITIES, "port-block: {dimension: count, supply: 1}",
                        "port-block: {dimension: count, supply: -1}", "[-1] is out of range"),
                broken(CAPABILITIES, "hitch-weight: {", "height: {dimension: length}\nhitch-weight: {",
                        "[height] is a figure of the data sheet already").at("height: {"),
                broken(LINES, "- id: owner-known", "- id: Owner Known", "[Owner Known] is not an id"),
                broken(FEATURES, "roll-bar:\n", "loader: {}\nroll-bar:\n", "the key [loader] is already there")
                        .at("loader: {}"),
                broken(FEATURES, "operator-station", "operators-station", "none of the words"),
                broken(FEATURES, "included, utility: included}", "included}", "[utility] is missing"),
                broken(FEATURES, "gives: [quick-coupler]", "gives: [quick-copler]", "did you mean [quick-coupler]?"),
                broken(FEATURES, "    plate: [{", "    plait: [{", "has no kind [plait]"),
                broken(FEATURES, "  count: 3", "  count: many", "[many] is no whole number"),
                broken(FEATURES, "  hurts: true", "  hurts: maybe", "neither yes nor no"),
                broken(FEATURES, "amount: -90 lb", "amount: -90 in", "unit of length"),
                broken(ADD_ONS, "gives: [quick-attach.plate]", "gives: [quick-attach.plank]", "no kind [plank]"),
                broken(ADD_ONS, "  excludes: [hose-kit]", "  excludes: [hoses-kit]", "did you mean [hose-kit]?"),
                broken(ADD_ONS, "{low: 1, high: 3}", "{low: 3, high: 1}", "fitting hours 3.0 to 1.0").at("{low: 3"),
                broken(ADD_ONS, "classes: [subcompact, small, mid, large]", "classes: [tiny]", "[tiny] is none of"),
                broken(ADD_ONS, "by: any-shop", "by: anyone", "[anyone] is none of the words"),
                broken(ADD_ONS, "{of: rear-remotes, at-most: 2}", "{of: rear-remotes}", "either at-least or at-most"),
                broken(ADD_ONS, "stopgap-hours: 20", "stopgap-hours: 0", "[0] is out of range"),
                broken(ATTACHMENTS, "does: [mow-lawn]", "does: [mow-lawns]", "did you mean [mow-lawn]?"),
                broken(ATTACHMENTS, "state: rear-tool-on", "state: rear-tool", "no working state [rear-tool]"),
                broken(ATTACHMENTS, "mass: 450 lb", "mass: 450 pounders", "no unit that is known"),
                broken(ATTACHMENTS, "width: 60 in", "width: -60 in", "less than nothing"),
                broken(ATTACHMENTS, "at-least: 18 hp", "at-least: 18 lb", "unit of mass"),
                broken(ATTACHMENTS, "- {of: pto-power, at-least: 18 hp}", "- pto-power", "needs an amount"),
                broken(ATTACHMENTS, "at-least: 18 hp", "at-least: steering-weight", "[pto-power] is no mass"),
                broken(ATTACHMENTS, "in: [loader-work]}]\n  needs", "in: [loader-wurk]}]\n  needs",
                        "no working state [loader-wurk]").at("loader-wurk"),
                broken(JOBS, "cautions: [loader]", "cautions: [louder]", "did you mean [loader]?"),
                broken(JOBS, "other-ways: [hire]", "other-ways: [hire, contract]", "no price a year for [contract]")
                        .at("move-pallets:"));
    }

    static List<Break> models() {
        return List.of(
                broken(MODELS, "class: subcompact", "class: sub", "[sub] is none of the words"),
                broken(MODELS, "    wheelbase: 57 in\n", "",
                        "the figure [wheelbase] is missing").at("    engine-power"),
                broken(MODELS, "wheelbase: 57 in", "wheelbase: 57 lb", "unit of mass"),
                broken(MODELS, "wheelbase: 57 in", "weelbase: 57 in", "did you mean [wheelbase]?"),
                broken(MODELS, "{from: 2015, to: 2030}", "{from: 2030, to: 2015}", "first year comes after the last"),
                broken(MODELS, "loader: yes,", "loader: perhaps,", "does not say what of [loader]"),
                broken(MODELS, "loader: yes,", "loder: yes,", "did you mean [loader]?"),
                broken(MODELS, "offering: {rear-remotes: extra}", "offering: {rear-remote: extra}",
                        "did you mean [rear-remotes]?"),
                broken(MODELS, "offering: {rear-remotes: extra}", "offering: {rear-remotes: ever}", "[ever] is none"),
                broken(MODELS, "limits: {rear-remotes: 1}", "limits: {rear-remotes: 9}", "[9] is out of range"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"catalogue", "models"})
    void itIsNamedWithItsLineAndNothingElseIs(Break each) {
        each.check(folder);
    }
}
