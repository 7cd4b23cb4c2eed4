package fencerow.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Tally;
import fencerow.kiosk.Rooms;
import fencerow.stock.Unit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import fencerow.wording.ReportSheet;
import fencerow.wording.Texts;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The demo's units and questions; the counts are made up. */
class ReportTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();
    private static final LocalDate FROM = LocalDate.parse("2026-03-01");
    private static final LocalDate TO = LocalDate.parse("2026-03-31");

    private static Tally add(Tally tally, Kind kind, String subject, String detail, long count) {
        return tally.plus(new Counter(kind, subject, detail), count);
    }

    private static Report report(Tally tally) {
        return Report.of(SHOWROOM, tally, FROM, TO);
    }

    private static ReportSheet sheet(Report report, String language) {
        Texts texts = Rooms.premises().texts(language);
        return ReportSheet.of(report, new Phrases(texts, new Quantities(texts.locale(), false)::show),
                Rooms.premises().libraries().get(language));
    }

    /** A count of each kind, so many times. */
    private static Tally everything(long count) {
        Unit unit = SHOWROOM.units().get(0);
        Tally tally = Tally.NONE;
        for (Kind kind : Kind.values()) {
            String subject = switch (kind) {
                case VISIT, PRINTED -> "";
                case ASKED, ANSWERED -> "jobs";
                case BELIEF_RIGHT, BELIEF_WRONG, BELIEF_UNSURE -> "quick-attach";
                case NOT_FOUND -> "helicopter";
                case READ -> "loader";
                case UNIT_ASKED, UNIT_LACKED, UNIT_SHORT, UNIT_UNCHECKED -> unit.id().value();
                case UNIT_FITTED -> "gone-by-now";
                case UNMET -> "height";
                case WOULD_READY -> "grille-guard-kit";
                case SHOWN, SECONDS -> "topic";
                case FAILED -> "IllegalStateException";
            };
            String detail = switch (kind) {
                case UNIT_SHORT -> "pto-power";
                case WOULD_READY -> unit.id().value();
                default -> "";
            };
            tally = add(tally, kind, subject, detail, count);
        }
        return tally;
    }

    private static List<ReportSheet.Row> rows(ReportSheet sheet) {
        return sheet.sections().stream().flatMap(section -> section.rows().stream()).toList();
    }

    @Test
    void eachKindOfCountThatIsLargeEnoughIsSaidInBothLanguages() {
        for (String language : List.of("en", "es")) {
            ReportSheet sheet = sheet(report(everything(3)), language);
            sheet.sections().forEach(section ->
                    assertEquals(section.id().equals("printed") ? 2 : 1, section.rows().size(), section.toString()));
        }
    }

    @Test
    void whatHappenedLessThanThreeTimesIsInNothing() {
        for (long count : new long[] {1, 2}) {
            Report report = report(everything(count));
            assertEquals(0, report.visits());
            assertEquals(List.of(), rows(sheet(report, "en")));
        }
    }

    @Test
    void beliefsStandByTheShareThatIsSurelyWrong() {
        Tally tally = add(Tally.NONE, Kind.BELIEF_WRONG, "rear-remotes", "", 3);
        tally = add(tally, Kind.BELIEF_WRONG, "quick-attach", "", 60);
        tally = add(tally, Kind.BELIEF_RIGHT, "quick-attach", "", 20);
        tally = add(tally, Kind.BELIEF_WRONG, "loader", "", 3);
        tally = add(tally, Kind.BELIEF_UNSURE, "loader", "", 97);
        List<Report.Wrong> wrong = report(tally).wrong();
        assertEquals(List.of("quick-attach", "rear-remotes", "loader"),
                wrong.stream().map(each -> each.question().id().value()).toList(),
                "3 of 3 is less sure than 60 of 80");
        assertEquals(new Share(60, 80), wrong.get(0).share());
    }

    @Test
    void addOnsStandByVisitsForTheMoneyAndOnlyOnUnitsThatAreHere() {
        List<Unit> units = SHOWROOM.units();
        Tally tally = Tally.NONE;
        for (String addOn : List.of("grille-guard-kit", "work-light-kit")) {
            for (Unit unit : units.subList(0, 3)) {
                tally = add(tally, Kind.WOULD_READY, addOn, unit.id().value(), 5);
            }
        }
        tally = add(tally, Kind.WOULD_READY, "grille-guard-kit", "sold-last-year", 50);
        List<Report.Ahead> ahead = report(tally).ahead();
        assertTrue(ahead.size() >= 3, ahead.toString());
        for (int i = 1; i < ahead.size(); i++) {
            assertTrue(ahead.get(i - 1).visitsPer1000Dollars() >= ahead.get(i).visitsPer1000Dollars());
        }
        Report.Ahead first = ahead.get(0);
        double dollars = (first.price().low().cents() + first.price().high().cents()) / 200.0;
        assertEquals(5 / dollars * 1000, first.visitsPer1000Dollars(), 0.05);
        assertTrue(ahead.stream().allMatch(each -> units.contains(each.unit())));
    }

    @Test
    void aUnitThatSuitedSomebodyOnceIsNotNobodys() {
        String unit = SHOWROOM.units().get(0).id().value();
        String other = SHOWROOM.units().get(1).id().value();
        Tally tally = add(Tally.NONE, Kind.UNIT_ASKED, unit, "", 9);
        tally = add(tally, Kind.UNIT_ASKED, other, "", 9);
        tally = add(tally, Kind.UNIT_FITTED, other, "", 1);
        tally = add(tally, Kind.UNIT_SHORT, unit, "height", 6);
        tally = add(tally, Kind.UNIT_SHORT, unit, "pto-power", 2);
        List<Report.Nobodys> nobodys = report(tally).nobodys();
        assertEquals(1, nobodys.size());
        assertEquals(unit, nobodys.get(0).unit().id().value());
        assertEquals(List.of("height"),
                nobodys.get(0).causes().stream().map(each -> each.what().value()).toList());
    }

    @Test
    void whatIsAboutAnOlderContentIsLeftOut() {
        Tally tally = Stream.of(Kind.UNMET, Kind.READ, Kind.SHOWN, Kind.ASKED, Kind.WOULD_READY, Kind.BELIEF_WRONG)
                .map(kind -> new Counter(kind, "no-such-thing", "no-such-unit"))
                .reduce(Tally.NONE, (sum, counter) -> sum.plus(counter, 9), Tally::plus);
        assertEquals(List.of(), rows(sheet(report(tally), "en")));
    }
}
