package fencerow.content;

import fencerow.checklist.Weights;
import fencerow.desk.Pin;
import fencerow.desk.Settings;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import fencerow.wording.PseudoLocale;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** Reads {@code showroom.yaml}. */
final class SettingsReader {
    private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*");
    private static final int MOST_LINES = 100;
    private static final int MOST_COPIES = 1000;
    private static final int MOST_DAYS = 366;

    private SettingsReader() {}

    /**
     * What the showroom sets.
     *
     * @param strip   words of the strip at the foot, by language
     * @param weights how much relevance counts
     * @param fees    price lines that stock leaves empty
     */
    record Set(Settings settings, Map<String, String> strip, Weights weights, UnitReader.Fees fees) {}

    private enum Measures { us, metric }

    private enum Sheet { letter, a4 }

    private enum Given { off, on }

    static Optional<Set> read(YamlNode top) {
        int before = top.problems().count();
        YamlMap map = top.map("name", "strip", "languages", "measures", "panel", "idle", "paper", "printer",
                "save-folder", "copies", "data-folder", "database", "stock-inbox", "list", "come-back", "pin", "fees",
                "relevance");
        String name = map.text("name");
        Map<String, String> strip = new LinkedHashMap<>();
        map.entries("strip").forEach(entry -> strip.put(entry.key(), entry.value().text()));
        List<String> languages = languages(map);
        languages.stream()
                .filter(language -> !strip.containsKey(language) && !language.equals(PseudoLocale.LANGUAGE))
                .forEach(language -> map.problems().error(map.placeOf("strip"), "[strip] has no words in language ["
                        + language + "]", "add " + language + ": and the words"));
        boolean metric = map.choice("measures", Measures.values(), Measures::name) == Measures.metric;
        YamlMap screen = map.map("panel", "diagonal", "double-touch");
        Amount diagonal = screen.amount("diagonal", Dimension.LENGTH);
        Duration doubleTouch = Duration.ofMillis(Math.round(screen.amount("double-touch", Dimension.TIME).si() * 1000));
        YamlMap idle = map.map("idle", "warn-after", "reset-after", "sign-out");
        Duration warnAfter = seconds(idle.amount("warn-after", Dimension.TIME));
        Duration resetAfter = seconds(idle.amount("reset-after", Dimension.TIME));
        Optional<Duration> signOut = idle.find("sign-out").map(node ->
                seconds(idle.amount("sign-out", Dimension.TIME)));
        Settings.PaperSettings paper = paper(map);
        Optional<Pin> pin = pin(map);
        OptionalInt comeBackDays = comeBackDays(map);
        // Used before this file is read as a whole, see ShowroomLine; here only their places among the keys are held.
        map.findText("data-folder");
        map.findText("database");
        map.findText("stock-inbox");
        UnitReader.Fees fees = fees(map);
        Optional<Weights> weights = weights(map);
        Optional<Settings.Panel> panel = top.problems().make(map.placeOf("panel"), before, () ->
                new Settings.Panel(diagonal.si(), doubleTouch));
        Optional<Settings.Idle> waits = top.problems().make(map.placeOf("idle"), before, () ->
                signOut.map(staff -> new Settings.Idle(warnAfter, resetAfter, staff))
                        .orElseGet(() -> new Settings.Idle(warnAfter, resetAfter)));
        if (panel.isEmpty() || waits.isEmpty() || weights.isEmpty() || pin.isEmpty()) {
            return Optional.empty();
        }
        return top.problems().make(map.place(), before, () -> new Set(
                new Settings(name, languages, metric, waits.get(), panel.get(), paper, pin.get(), comeBackDays),
                strip, weights.get(), fees));
    }

    private static List<String> languages(YamlMap map) {
        List<String> languages = new ArrayList<>();
        for (YamlNode node : map.need("languages").map(YamlNode::list).orElse(List.of())) {
            String tag = node.text();
            if (!LANGUAGE.matcher(tag).matches()) {
                node.error("[" + tag + "] is no language", "write a language tag such as en or es");
            } else if (languages.contains(tag)) {
                node.error("[" + tag + "] stands here twice", "delete one of them");
            } else {
                languages.add(tag);
            }
        }
        return languages;
    }

    private static Settings.PaperSettings paper(YamlMap map) {
        boolean letter = map.choice("paper", Sheet.values(), Sheet::name) == Sheet.letter;
        Optional<String> printer = map.find("printer")
                .filter(node -> !node.isNothing())
                .map(YamlNode::text)
                .filter(text -> !text.isEmpty());
        String folder = map.text("save-folder");
        YamlMap list = map.map("list", "page-one", "walk-away");
        YamlMap copies = map.map("copies", "visit", "hour");
        return new Settings.PaperSettings(
                printer, folder, letter, list.whole("page-one", 1, MOST_LINES), list.whole("walk-away", 0, MOST_LINES),
                copies.whole("visit", 1, MOST_COPIES), copies.whole("hour", 1, MOST_COPIES));
    }

    private static Optional<Pin> pin(YamlMap map) {
        YamlMap pin = map.map("pin", "demo", "hash");
        if (map.has("pin") && pin.has("demo") == pin.has("hash")) {
            map.problems().error(pin.place(), "the PIN is given not at all or twice", "write either hash or demo");
            return Optional.empty();
        }
        int before = map.problems().count();
        if (pin.has("demo") && !Pin.DIGITS.matcher(pin.text("demo")).matches()) {
            map.problems().error(pin.placeOf("demo"), "the demo PIN is not 4 to 8 digits", "write them in quotes");
        }
        String text = pin.findText("demo").or(() -> pin.findText("hash")).orElse("");
        return map.problems().make(pin.place(), before, () -> new Pin(text));
    }

    private static OptionalInt comeBackDays(YamlMap map) {
        if (map.lacks("come-back")) {
            return OptionalInt.empty();
        }
        YamlMap comeBack = map.map("come-back", "codes", "days");
        boolean given = comeBack.choice("codes", Given.values(), Given::name) == Given.on;
        int days = comeBack.whole("days", 1, MOST_DAYS);
        return given ? OptionalInt.of(days) : OptionalInt.empty();
    }

    private static UnitReader.Fees fees(YamlMap map) {
        YamlMap fees = map.map("fees", "freight", "setup", "paperwork");
        return new UnitReader.Fees(money(fees, "freight"), money(fees, "setup"), money(fees, "paperwork"));
    }

    private static Money money(YamlMap map, String key) {
        Amount amount = map.amount(key, Dimension.MONEY);
        if (amount.si() < 0) {
            map.problems().error(map.placeOf(key), "[" + key + "] is negative", "write 0 USD or more");
        }
        return Money.ofDollars(amount.si());
    }

    private static Optional<Weights> weights(YamlMap map) {
        int before = map.problems().count();
        YamlMap relevance = map.map("relevance", "must", "wish", "else");
        double must = relevance.number("must", 0, 1);
        double wish = relevance.number("wish", 0, 1);
        double other = relevance.number("else", 0, 1);
        return map.problems().make(relevance.place(), before, () -> new Weights(must, wish, other));
    }

    private static Duration seconds(Amount time) {
        return Duration.ofSeconds(Math.round(time.si()));
    }
}
