package fencerow.wording;

import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.terms.CapabilityId;
import fencerow.terms.TopicId;
import fencerow.visit.Report;
import fencerow.visit.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A report in words: screen, command line and table all show this.
 *
 * @param title    with its days
 * @param visits   how many visits it is about
 * @param sections in the order of what a dealer can do about it
 */
public record ReportSheet(String title, String visits, List<Section> sections) {
    private static final int MOST_ROWS = 10;

    /** Copies the list. */
    public ReportSheet {
        sections = List.copyOf(sections);
    }

    /**
     * One question answered.
     *
     * @param id    its name in text keys
     * @param title the answer's heading
     * @param lead  how to read it; what to say instead where there are no rows
     * @param rows  the most telling first
     */
    public record Section(String id, String title, String lead, List<Row> rows) {
        /** Copies the list. */
        public Section {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One thing and its number.
     *
     * @param id     of the thing
     * @param name   of the thing
     * @param words  the number in words
     * @param number itself; what it counts is the section's
     * @param span   the bounds of the number, where it is an estimate
     */
    public record Row(String id, String name, String words, double number, Optional<Span> span) {}

    /** Bounds of an estimate. */
    public record Span(double low, double high) {}

    /** In the words of the phrases' language. */
    public static ReportSheet of(Report report, Phrases phrases, Library library) {
        return new Maker(report, phrases, library).sheet();
    }

    /** Puts it together. */
    private record Maker(Report report, Phrases phrases, Library library) {
        private ReportSheet sheet() {
            Texts texts = phrases.texts();
            return new ReportSheet(
                    say("title", Map.of("from", texts.day(report.from()), "to", texts.day(report.to()))),
                    say("visits", Map.of("count", report.visits())),
                    List.of(wrong(), sought(), unmet(), ahead(), nobodys(), read(), asked(), screens(), printed()));
        }

        private String say(String key, Map<String, ?> words) {
            return phrases.texts().get("report." + key, words);
        }

        private Section section(String id, Stream<Row> rows) {
            List<Row> most = rows.limit(MOST_ROWS).toList();
            return new Section(id, say(id + ".title", Map.of()),
                    say(id + (most.isEmpty() ? ".none" : ".lead"), Map.of()), most);
        }

        private Row row(String section, String id, String name, double number, Map<String, ?> words) {
            return new Row(id, name, say(section + ".row", words), number, Optional.empty());
        }

        private Section wrong() {
            return section("wrong", report.wrong().stream().map(each -> {
                Share share = each.share();
                String words = say("wrong.row", Map.of("count", share.count(), "of", share.of(),
                        "low", hundredths(share.low()), "high", hundredths(share.high())));
                String name = each.question().feature().map(phrases.labels()::feature)
                        .orElseGet(() -> topic(each.question().topic()).orElse(""));
                return new Row(each.question().id().value(), name, words, share.seen(),
                        Optional.of(new Span(share.low(), share.high())));
            }));
        }

        private static long hundredths(double share) {
            return Math.round(share * 100);
        }

        private Optional<String> topic(TopicId topic) {
            return library.find(topic).map(Explainer::title);
        }

        private Section sought() {
            return section("sought", report.sought().stream().map(each ->
                    row("sought", each.what(), each.what(), (double) each.times(), Map.of("count", each.times()))));
        }

        private Section unmet() {
            return section("unmet", named(report.unmet(), this::capability, "unmet"));
        }

        private Section ahead() {
            return section("ahead", report.ahead().stream().flatMap(each ->
                    known(() -> phrases.labels().item(each.addOn())).stream().map(addOn -> row("ahead",
                            each.addOn() + " " + each.unit().id(),
                            say("ahead.name", Map.of("item", addOn, "unit", phrases.labels().unit(each.unit()),
                                    "id", each.unit().id().value())),
                            each.visitsPer1000Dollars(), Map.of("count", each.visits(), "price",
                                    phrases.range(each.price()), "rate", tenths(each.visitsPer1000Dollars()))))));
        }

        private static double tenths(double number) {
            return Math.round(number * 10) / 10.0;
        }

        private Section nobodys() {
            return section("nobodys", report.nobodys().stream().map(each -> {
                String causes = phrases.list(each.causes().stream()
                        .flatMap(cause -> capability(cause.what()).stream())
                        .toList());
                return new Row(each.unit().id().value(),
                        say("nobodys.name", Map.of("unit", phrases.labels().unit(each.unit()),
                                "id", each.unit().id().value())),
                        say(causes.isEmpty() ? "nobodys.row-alone" : "nobodys.row",
                                Map.of("count", each.visits(), "causes", causes)),
                        each.visits(), Optional.empty());
            }));
        }

        private Section read() {
            return section("read", named(report.read(), this::topic, "read"));
        }

        private Section asked() {
            return section("asked", report.asked().stream().flatMap(each ->
                    known(() -> phrases.texts().get("question." + each.question() + ".ask")).stream()
                            .map(ask -> row("asked", each.question().value(), ask, (double) each.answered(),
                                    Map.of("answered", each.answered(), "asked", each.asked())))));
        }

        private Section screens() {
            return section("screens", report.screens().stream().flatMap(each ->
                    phrases.texts().find("report.screen." + each.screen()).stream().map(name -> row("screens",
                            each.screen(), name, each.seconds(),
                            Map.of("count", each.times(), "seconds", Math.round(each.seconds()))))));
        }

        private Section printed() {
            List<Row> rows = new ArrayList<>();
            if (report.printed() > 0) {
                rows.add(row("printed", "lists", say("printed.name", Map.of()), (double) report.printed(),
                        Map.of("count", report.printed())));
            }
            report.failed().forEach(each -> rows.add(new Row(each.what(), each.what(),
                    say("printed.failed", Map.of("count", each.times())), each.times(), Optional.empty())));
            return section("printed", rows.stream());
        }

        private <T> Stream<Row> named(
                List<Report.Times<T>> all, Function<T, Optional<String>> name, String section) {
            return all.stream().flatMap(each -> name.apply(each.what()).stream().map(words ->
                    row(section, each.what().toString(), words, (double) each.times(), Map.of("count", each.times()))));
        }

        private Optional<String> capability(CapabilityId capability) {
            return known(() -> phrases.labels().capability(capability));
        }

        /** Empty for what was counted under an older content that had other ids. */
        private static Optional<String> known(Supplier<String> words) {
            try {
                return Optional.of(words.get());
            } catch (IllegalArgumentException e) {
                return Optional.empty();
            }
        }
    }
}
