package fencerow.printing;

import fencerow.checklist.ChecklistLine;
import fencerow.checklist.Composer;
import fencerow.printing.SheetValues.Setting;
import fencerow.printing.SheetValues.Style;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Works out how many lines of the list one page holds, by setting it: the longest run of lines, most at stake first,
 * with which it is one page.
 */
final class Fit {
    /** Where page one would hold fewer lines than this, its box of signs gives way. */
    private static final int FEWEST_LINES = 5;

    private static final int MOST_PRINTED_LINES = 2;

    private final List<ChecklistLine> lines;
    private final Function<Setting, Typesetter.Pages> list;
    private final Map<String, Style> styles = new HashMap<>();

    /**
     * Fits lines.
     *
     * @param lines all of them, in any order
     * @param list  sets the list alone
     */
    Fit(List<ChecklistLine> lines, Function<Setting, Typesetter.Pages> list) {
        this.lines = lines;
        this.list = list;
    }

    /** The lines placed and set, at most so many lines and signs on page one. */
    Setting upTo(int mostLines, int mostSigns) {
        int most = Math.min(mostLines, count(false));
        int signs = Math.min(mostSigns, count(true));
        int fitting = fitting(most, signs);
        while (fitting < Math.min(FEWEST_LINES, most) && signs > 0) {
            signs--;
            fitting = fitting(most, signs);
        }
        return setting(fitting, signs);
    }

    private int count(boolean walkAway) {
        return (int) lines.stream().filter(line -> line.template().walkAway() == walkAway).count();
    }

    private Setting setting(int count, int signs) {
        return new Setting(Composer.placed(lines, count, signs), Map.copyOf(styles));
    }

    private int fitting(int most, int signs) {
        int guess = guess(most, signs);
        if (guess == most || holds(guess, signs)) {
            while (guess < most && holds(guess + 1, signs)) {
                guess++;
            }
            return guess;
        }
        while (guess > 0 && !holds(guess - 1, signs)) {
            guess--;
        }
        return Math.max(0, guess - 1);
    }

    /** Near the right number; the most only if it is right. Also picks the style of each line. */
    private int guess(int most, int signs) {
        while (true) {
            Setting setting = setting(most, signs);
            try (Typesetter.Pages pages = list.apply(setting)) {
                if (!tighten(setting.lines(), pages)) {
                    String any = setting.lines().isEmpty() ? "" : id(setting.lines().get(0));
                    return pages.count() == 1 ? most : Math.max(0, most - Math.max(1, pages.tooMany(any)));
                }
            }
        }
    }

    /** Sets lines that take too many printed lines one step tighter; false if there are none left to tighten. */
    private boolean tighten(List<ChecklistLine> placed, Typesetter.Pages pages) {
        boolean changed = false;
        for (ChecklistLine line : placed) {
            Style style = styles.getOrDefault(line.id(), Style.FULL);
            if (pages.linesOf(id(line)) > MOST_PRINTED_LINES && style != Style.BRIEF) {
                styles.put(line.id(), style == Style.FULL ? Style.CLOSE : Style.BRIEF);
                changed = true;
            }
        }
        return changed;
    }

    private static String id(ChecklistLine line) {
        return "line-" + line.id();
    }

    private boolean holds(int count, int signs) {
        try (Typesetter.Pages pages = list.apply(setting(count, signs))) {
            return pages.count() == 1;
        }
    }
}
