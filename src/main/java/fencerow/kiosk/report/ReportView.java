package fencerow.kiosk.report;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Place.StaffReport.Period;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.ChoiceTile;
import fencerow.kiosk.kit.Columns;
import fencerow.kiosk.kit.Masonry;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.SpanBar;
import fencerow.kiosk.kit.Words;
import fencerow.wording.ReportSheet;
import fencerow.wording.ReportSheet.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Draws the sections as cards with a bar for each number. */
final class ReportView {
    private static final double CARD_EMS = 30;
    private static final double PERIOD_EMS = 13;

    private final Frame frame;
    private final Place.StaffReport place;
    private final Consumer<Period> touched;
    private final Page page;

    ReportView(Frame frame, Place.StaffReport place, Consumer<Period> touched) {
        this.frame = frame;
        this.place = place;
        this.touched = touched;
        this.page = new Page(frame.scale(), place.scroll(), frame.say("column.up"), frame.say("column.down"));
        page.show(Words.lead(frame.say("results.working")));
    }

    Page page() {
        return page;
    }

    void showUnreadable() {
        page.show(Words.lead(frame.say("report.unreadable")));
    }

    void show(ReportSheet sheet) {
        List<Node> cards = new ArrayList<>();
        sheet.sections().forEach(section -> cards.add(card(section)));
        page.show(Boxes.loose(periods(),
                Boxes.tight(Words.subheading(sheet.title()), Words.body(sheet.visits())),
                new Masonry(frame.scale(), CARD_EMS, 2, cards)));
    }

    private Node periods() {
        return new Columns(frame.scale(), PERIOD_EMS, Period.values().length, Arrays.stream(Period.values())
                .map(period -> ChoiceTile.one(frame.say("report.period." + key(period)), Optional.empty(),
                        period == place.period(), () -> touched.accept(period)))
                .toList());
    }

    private static String key(Period period) {
        return period.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private VBox card(ReportSheet.Section section) {
        VBox card = Boxes.card(Boxes.tight(Words.subheading(section.title()), Words.small(section.lead())));
        double most = section.rows().stream().mapToDouble(ReportView::reach).max().orElse(1);
        section.rows().forEach(row -> card.getChildren().add(Boxes.tight(
                Words.of("line-title", row.name()), bar(row, most), Words.small(row.words()))));
        return card;
    }

    private static double reach(Row row) {
        return row.span().map(ReportSheet.Span::high).orElse(row.number());
    }

    private SpanBar bar(Row row, double most) {
        return new SpanBar(frame.scale(), row.number() / most,
                row.span().map(span -> new SpanBar.Ends(span.low() / most, span.high() / most)), row.words());
    }
}
