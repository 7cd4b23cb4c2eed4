package fencerow.printing;

import fencerow.checklist.AddCost;
import fencerow.visit.ReturnCode;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the template of the comparison may ask for: three columns, filled in or blank, and a row for each must-have.
 *
 * @param handout  what to print
 * @param phrases  the words
 * @param mostRows the most must-haves with a row, one fewer where a trade-in has one; the others are counted
 */
record ComparisonValues(Handout handout, Phrases phrases, int mostRows) {
    private static final List<String> HEADS = List.of("first", "second", "third");

    /** By name. */
    Map<String, Object> values() {
        List<Handout.MustHave> mustHaves = handout.mustHaves();
        List<Map<String, Object>> rows = new ArrayList<>();
        boolean hasTrade = handout.tractors().stream().anyMatch(tractor -> tractor.trade().cents() > 0);
        int most = hasTrade ? mostRows - 1 : mostRows;
        for (int i = 0; i < Math.min(most, mustHaves.size()); i++) {
            rows.add(mustRow(i, mustHaves.get(i)));
        }
        int more = mustHaves.size() - rows.size();
        List<Map<String, Object>> columns = new ArrayList<>();
        for (int i = 0; i < Handout.MOST_TRACTORS; i++) {
            columns.add(i < handout.tractors().size() ? filled(i, handout.tractors().get(i)) : blank(i));
        }
        Texts texts = phrases.texts();
        return Map.of(
                "columns", columns,
                "mustRows", rows,
                "hasMustRows", !rows.isEmpty(),
                "hasTrade", hasTrade,
                "more", more > 0 ? texts.get("paper.compare.more-must-haves", Map.of("count", more)) : "",
                "code", QrCode.text(handout, texts),
                "comeBack", handout.comeBack().map(code -> comeBack(code, texts)).orElse(""),
                "private", handout.comeBack().isPresent() ? "" : texts.get("paper.private"));
    }

    /** What the code is, how long it works and what it opens. */
    static String comeBack(ReturnCode code, Texts texts) {
        return texts.get("paper.code.come-back", Map.of("code", code.code(), "day", texts.day(code.lastDay())));
    }

    private Map<String, Object> mustRow(int index, Handout.MustHave mustHave) {
        List<Map<String, Object>> cells = new ArrayList<>();
        for (int i = 0; i < Handout.MOST_TRACTORS; i++) {
            cells.add(i < handout.tractors().size()
                    ? cell(handout.tractors().get(i).mustHaves().get(index))
                    : Map.of("blank", true, "words", ""));
        }
        return Map.of("words", mustHave.words(), "cost", costHere(index, mustHave.cost()), "cells", cells);
    }

    /** A price that stands on a row above is most often the same tool's: it must not be added up twice. */
    private String costHere(int index, AddCost cost) {
        if (handout.mustHaves().stream().limit(index).anyMatch(above -> above.cost().equals(cost))) {
            return cost instanceof AddCost.Costs ? phrases.texts().get("paper.compare.counted-above") : "";
        }
        if (cost instanceof AddCost.Costs costs) {
            return phrases.texts().get("paper.compare.cost-to-add-here", Map.of(
                    "low", phrases.money(costs.range().low()), "high", phrases.money(costs.range().high())));
        }
        return cost instanceof AddCost.Impossible ? words(cost) : "";
    }

    /** Only whether it is there: what is to be added has one price together, not the sum of the single ones. */
    private Map<String, Object> cell(AddCost cost) {
        return Map.of("blank", false, "words", words(cost));
    }

    private String words(AddCost cost) {
        String key;
        if (cost instanceof AddCost.Nothing) {
            key = "has-it";
        } else if (cost instanceof AddCost.Costs) {
            key = "to-add";
        } else {
            key = cost instanceof AddCost.Impossible ? "cannot-be-added" : "cost-to-add-unknown";
        }
        return phrases.texts().get("paper.compare." + key);
    }

    private Map<String, Object> blank(int index) {
        Map<String, Object> column = new HashMap<>();
        column.put("head", head(index));
        column.put("blank", true);
        for (String row : List.of(
                "seller", "model", "yearHours", "asking", "extras", "outTheDoor", "toSpend", "trade", "ready")) {
            column.put(row, "");
        }
        return column;
    }

    private Map<String, Object> filled(int index, Handout.Tractor tractor) {
        Map<String, Object> column = blank(index);
        column.put("blank", false);
        column.put("seller", tractor.seller());
        column.put("model", tractor.model());
        column.put("yearHours", tractor.yearHours());
        column.put("asking", phrases.money(tractor.asking()));
        column.put("extras", phrases.money(tractor.extras()));
        column.put("outTheDoor", phrases.money(tractor.outTheDoor()));
        column.put("toSpend", tractor.toSpend().map(phrases::range).orElse(""));
        column.put("trade", tractor.trade().cents() > 0 ? phrases.money(tractor.trade()) : "");
        column.put("ready", tractor.ready().map(phrases::range).orElse(tractor.verdict()));
        return column;
    }

    private String head(int index) {
        return phrases.texts().get("paper.compare." + HEADS.get(index));
    }
}
