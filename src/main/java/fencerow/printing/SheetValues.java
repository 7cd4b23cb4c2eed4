package fencerow.printing;

import fencerow.checklist.Because;
import fencerow.checklist.ChecklistLine;
import fencerow.checklist.ChecklistLine.Place;
import fencerow.terms.Stop;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the templates may ask for, by name. */
final class SheetValues {
    /** Fewer than ten things stand together, or people lose their place. */
    private static final int LARGEST_GROUP = 9;

    private static final int MOST_MUST_HAVES = 12;

    private static final int MOST_CAUTIONS = 3;

    private final Handout handout;
    private final Phrases phrases;
    private final PageFormat format;
    private final Setting setting;

    /** How one line of the list is set so that it takes at most two printed lines. */
    enum Style {
        /** In full. */
        FULL(""),
        /** A little smaller where the type may be. */
        CLOSE("close"),
        /** Without what good looks like, which stays on screen. */
        BRIEF("brief");

        private final String id;

        Style(String id) {
            this.id = id;
        }
    }

    /**
     * Where the lines stand and how each is set.
     *
     * @param lines    placed
     * @param styles   by line id; the others in full
     * @param mustRows how many must-haves have a row in the comparison, at most
     */
    record Setting(List<ChecklistLine> lines, Map<String, Style> styles, int mustRows) {
        /** With the most must-have rows: with these the comparison has 18 rows. */
        Setting(List<ChecklistLine> lines, Map<String, Style> styles) {
            this(lines, styles, 5);
        }

        /** With one must-have row fewer. */
        Setting withOneMustRowLess() {
            return new Setting(lines, styles, mustRows - 1);
        }
    }

    SheetValues(Handout handout, Phrases phrases, PageFormat format, Setting setting) {
        this.handout = handout;
        this.phrases = phrases;
        this.format = format;
        this.setting = setting;
    }

    /** Whether there is anything to print on the sheet. */
    boolean hasContent(Sheet sheet) {
        return switch (sheet) {
            case FURTHER_LINES -> !at(Place.FURTHER_SHEET).isEmpty();
            case EXPLANATIONS -> new ExplanationValues(handout.library(), phrases).any(wrong());
            case LIST, COMPARISON, QUESTIONS, HAULING, SIT_TEST, DELIVERY_DAY, FIRST_YEAR, TEST_PAGE -> true;
        };
    }

    /** The values of a sheet's template. */
    Map<String, Object> of(Sheet sheet) {
        Map<String, Object> values = common();
        switch (sheet) {
            case LIST -> {
                putLines(values, "paper.list.heading", at(Place.PAGE_ONE));
                values.put("signs", at(Place.WALK_AWAY).stream().map(this::sign).toList());
                values.put("hasSigns", !at(Place.WALK_AWAY).isEmpty());
                values.put("cautions", cautions());
                values.put("hasCautions", !handout.cautions().isEmpty());
            }
            case COMPARISON -> values.putAll(new ComparisonValues(handout, phrases, setting.mustRows()).values());
            case FURTHER_LINES -> putLines(values, "paper.list.further-heading", at(Place.FURTHER_SHEET));
            case EXPLANATIONS -> values.put(
                    "explanations", new ExplanationValues(handout.library(), phrases).of(wrong()));
            case QUESTIONS, HAULING, SIT_TEST, DELIVERY_DAY, FIRST_YEAR, TEST_PAGE -> {
                // words only
            }
        }
        return values;
    }

    /** The values of the frame around all sheets. */
    Map<String, Object> page(List<Map<String, Object>> sheets, String css) {
        Map<String, Object> values = common();
        Texts texts = phrases.texts();
        String[] number = texts.get("paper.page", Map.of("page", "\n", "pages", "\n")).split("\n", -1);
        values.put("language", texts.language());
        values.put("pageSize", format.size().css());
        values.put("css", css);
        values.put("size", format.size().id());
        values.put("print", format.largePrint() ? "large" : "ordinary");
        values.put("pageBefore", number[0]);
        values.put("pageBetween", number[1]);
        values.put("pageAfter", number[2]);
        values.put("sheets", sheets);
        return values;
    }

    private Map<String, Object> common() {
        Texts texts = phrases.texts();
        Handout.Imprint imprint = handout.imprint();
        Map<String, Object> values = new HashMap<>();
        values.put("paper", new Words(texts, "paper"));
        values.put("caution", new Words(texts, "caution"));
        values.put("showroom", imprint.showroom());
        values.put("demo", imprint.demo());
        values.put("date", texts.get("paper.date", Map.of("date", texts.day(imprint.printed()))));
        values.put("version", texts.get("paper.version", Map.of("version", imprint.contentVersion())));
        values.put("help", texts.get("paper.help", Map.of("showroom", imprint.showroom())));
        values.put("work", handout.work().isEmpty()
                ? texts.get("paper.work.none")
                : texts.get("paper.work.line", Map.of("work", handout.work())));
        List<String> mustHaves = handout.mustHaves().stream().map(Handout.MustHave::words).toList();
        int more = mustHaves.size() - MOST_MUST_HAVES;
        values.put("mustHaves", mustHaves.stream().limit(MOST_MUST_HAVES).toList());
        values.put("noMustHaves", mustHaves.isEmpty());
        values.put("moreMustHaves", more > 0 ? texts.get("paper.must-haves.more", Map.of("count", more)) : "");
        return values;
    }

    private void putLines(Map<String, Object> values, String heading, List<ChecklistLine> lines) {
        boolean anyNeed = lines.stream().anyMatch(SheetValues::isNeeded);
        boolean anySure = lines.stream().anyMatch(SheetValues::wasSure);
        values.put("heading", phrases.texts().get(heading));
        values.put("stops", stops(lines));
        values.put("anyNeed", anyNeed);
        values.put("anySure", anySure);
        values.put("hasMarks", anyNeed || anySure);
    }

    private List<ChecklistLine> at(Place place) {
        return setting.lines().stream().filter(line -> line.place() == place).toList();
    }

    private List<ChecklistLine> wrong() {
        return setting.lines().stream().filter(SheetValues::isWrong).toList();
    }

    private static boolean isWrong(ChecklistLine line) {
        return line.because().stream().anyMatch(Because.WrongBelief.class::isInstance);
    }

    private static boolean wasSure(ChecklistLine line) {
        return line.because().stream().anyMatch(why -> why instanceof Because.WrongBelief wrong && wrong.sure());
    }

    private static boolean isNeeded(ChecklistLine line) {
        return line.because().stream()
                .anyMatch(why -> why instanceof Because.YourWork work && work.requirement().must());
    }

    private List<Map<String, Object>> stops(List<ChecklistLine> lines) {
        List<Map<String, Object>> stops = new ArrayList<>();
        for (Stop stop : Stop.values()) {
            List<ChecklistLine> here = lines.stream().filter(line -> line.template().stop() == stop).toList();
            int parts = (here.size() + LARGEST_GROUP - 1) / LARGEST_GROUP;
            for (int part = 0; part < parts; part++) {
                int from = here.size() * part / parts;
                int to = here.size() * (part + 1) / parts;
                stops.add(Map.of(
                        "name", phrases.texts().get("paper.stop." + stop.id()),
                        "again", part > 0,
                        "lines", here.subList(from, to).stream().map(this::line).toList()));
            }
        }
        return stops;
    }

    private Map<String, Object> line(ChecklistLine line) {
        Style style = setting.styles().getOrDefault(line.id(), Style.FULL);
        return Map.of(
                "id", line.id(),
                "style", style.id,
                "what", phrases.labels().lineWhat(line),
                "how", phrases.how(line),
                "good", style == Style.BRIEF ? "" : phrases.labels().lineGood(line),
                "atStake", atStake(line),
                "marked", wasSure(line) || isNeeded(line),
                "sure", wasSure(line),
                "need", isNeeded(line));
    }

    private String atStake(ChecklistLine line) {
        if (line.atStake().job()) {
            return phrases.texts().get("paper.list.job-at-stake");
        }
        return line.atStake().money().isZero() ? "" : phrases.range(line.atStake().money());
    }

    private Map<String, Object> sign(ChecklistLine line) {
        String sign = phrases.texts().find("line." + line.id() + ".sign").orElse(phrases.labels().lineBad(line));
        return Map.of("what", phrases.labels().lineWhat(line), "sign", sign);
    }

    private List<String> cautions() {
        return handout.cautions().stream()
                .limit(MOST_CAUTIONS)
                .map(id -> phrases.texts().get("caution." + id))
                .toList();
    }
}
