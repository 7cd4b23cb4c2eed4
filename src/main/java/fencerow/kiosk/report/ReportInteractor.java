package fencerow.kiosk.report;

import fencerow.desk.Counts;
import fencerow.explainers.Library;
import fencerow.kiosk.frame.Place;
import fencerow.visit.Report;
import fencerow.visit.Showroom;
import fencerow.wording.Phrases;
import fencerow.wording.ReportSheet;
import java.time.LocalDate;

/** Sums up the counts of a period, and puts them into words. */
final class ReportInteractor {
    private final Counts counts;
    private final Showroom showroom;
    private final Phrases phrases;
    private final Library library;

    ReportInteractor(Counts counts, Showroom showroom, Phrases phrases, Library library) {
        this.counts = counts;
        this.showroom = showroom;
        this.phrases = phrases;
        this.library = library;
    }

    /** Reads the database; called in the background. */
    ReportSheet sheet(Place.StaffReport.Period period) {
        LocalDate today = counts.today();
        LocalDate from = first(period, today);
        LocalDate to = period == Place.StaffReport.Period.LAST_MONTH ? today.withDayOfMonth(1).minusDays(1) : today;
        return ReportSheet.of(Report.of(showroom, counts.sum(from, to), from, to), phrases, library);
    }

    private static LocalDate first(Place.StaffReport.Period period, LocalDate today) {
        return switch (period) {
            case THIS_MONTH -> today.withDayOfMonth(1);
            case LAST_MONTH -> today.withDayOfMonth(1).minusMonths(1);
            case YEAR -> today.minusYears(1).plusDays(1);
        };
    }
}
