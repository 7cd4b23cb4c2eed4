package fencerow.kiosk;

import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Counts;
import fencerow.desk.Tally;
import java.time.LocalDate;
import java.util.List;

/** The same made-up counts for all days. */
final class ScriptedCounts implements Counts {
    private static final List<String> QUESTIONS =
            List.of("quick-attach", "rear-remotes", "loader", "mid-pto", "third-function", "factory-cab");
    private static final List<String> SCREENS = List.of("home", "topic", "questions", "results", "unit-sheet", "quiz");

    private static Tally tally() {
        Tally tally = Tally.NONE.plus(Counter.of(Kind.VISIT, ""), 148).plus(Counter.of(Kind.PRINTED, ""), 61)
                .plus(Counter.of(Kind.UNMET, "height"), 7).plus(Counter.of(Kind.FAILED, "IllegalStateException"), 3)
                .plus(Counter.of(Kind.NOT_FOUND, "helicopter"), 4).plus(Counter.of(Kind.NOT_FOUND, "sprayer"), 9)
                .plus(Counter.of(Kind.ASKED, "jobs"), 120).plus(Counter.of(Kind.ANSWERED, "jobs"), 117)
                .plus(Counter.of(Kind.UNIT_ASKED, "u-406"), 80)
                .plus(new Counter(Kind.UNIT_SHORT, "u-406", "height"), 22)
                .plus(new Counter(Kind.WOULD_READY, "grille-guard-kit", "n-203"), 12)
                .plus(new Counter(Kind.WOULD_READY, "work-light-kit", "n-206"), 19);
        for (int i = 0; i < QUESTIONS.size(); i++) {
            tally = tally.plus(Counter.of(Kind.BELIEF_WRONG, QUESTIONS.get(i)), 31 - 5L * i)
                    .plus(Counter.of(Kind.BELIEF_RIGHT, QUESTIONS.get(i)), 9 + 7L * i)
                    .plus(Counter.of(Kind.READ, QUESTIONS.get(i)), 12 + i);
        }
        for (int i = 0; i < SCREENS.size(); i++) {
            tally = tally.plus(Counter.of(Kind.SHOWN, SCREENS.get(i)), 40 + i)
                    .plus(Counter.of(Kind.SECONDS, SCREENS.get(i)), 900L * (i + 1));
        }
        return tally;
    }

    @Override
    public void ended(Tally visit) {}

    @Override
    public Tally sum(LocalDate from, LocalDate to) {
        return tally();
    }

    @Override
    public LocalDate today() {
        return LocalDate.parse("2026-03-14");
    }
}
