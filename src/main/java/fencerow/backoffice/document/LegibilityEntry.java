package fencerow.backoffice.document;

import fencerow.content.Legibility;
import fencerow.wording.Readability;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How easy texts of a language are to read.
 *
 * @param language     as a tag
 * @param kind         {@code articles}, or {@code other} texts of some length
 * @param texts        how many were measured
 * @param words        in all of them
 * @param meanSentence words of a sentence
 * @param scale        what the value is: {@code grade} (Flesch-Kincaid, lower is easier) or {@code ease} (Szigriszt,
 *                     higher is easier)
 * @param value        of all of them as one
 * @param hardest      key of the hardest one
 * @param hardestValue its value
 */
public record LegibilityEntry(
        String language,
        String kind,
        int texts,
        int words,
        double meanSentence,
        String scale,
        double value,
        String hardest,
        double hardestValue) {
    /** Sums up articles and other texts of a language; none where nothing was measured. */
    static List<LegibilityEntry> of(String language, List<Legibility> measured) {
        List<LegibilityEntry> entries = new ArrayList<>();
        for (boolean articles : new boolean[] {true, false}) {
            List<Legibility> some =
                    measured.stream().filter(each -> each.isArticle() == articles).toList();
            if (!some.isEmpty()) {
                entries.add(of(language, articles ? "articles" : "other", some));
            }
        }
        return entries;
    }

    private static LegibilityEntry of(String language, String kind, List<Legibility> some) {
        boolean ease = language.equals("es");
        ToDoubleFunction<Readability> scale = ease ? Readability::szigriszt : Readability::fleschKincaidGrade;
        Readability all = some.get(0).readability();
        Legibility hardest = some.get(0);
        for (Legibility each : some.subList(1, some.size())) {
            all = all.plus(each.readability());
            double further = scale.applyAsDouble(each.readability()) - scale.applyAsDouble(hardest.readability());
            hardest = ease == further < 0 ? each : hardest;
        }
        return new LegibilityEntry(language, kind, some.size(), all.words(), rounded(all.meanSentence()),
                ease ? "ease" : "grade", rounded(scale.applyAsDouble(all)), hardest.key(),
                rounded(scale.applyAsDouble(hardest.readability())));
    }

    private static double rounded(double value) {
        return Math.round(10 * value) / 10.0;
    }
}
