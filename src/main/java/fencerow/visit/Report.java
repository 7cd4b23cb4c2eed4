package fencerow.visit;

import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Tally;
import fencerow.desk.VisitBook;
import fencerow.quiz.QuizQuestion;
import fencerow.stock.Unit;
import fencerow.terms.CapabilityId;
import fencerow.terms.ItemId;
import fencerow.terms.PriceRange;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import fencerow.terms.UnitId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the visits of some days say to the showroom. Counts below {@link VisitBook#FEWEST} are in none of the lists, so
 * that nothing in it is about one visit; neither is what is about content or stock that is gone.
 *
 * @param from    the first day
 * @param to      the last day
 * @param visits  how many ended
 * @param wrong   beliefs, the ones most people are sure to have wrong first
 * @param sought  words that found nothing, the most frequent first
 * @param unmet   capabilities that were short in visits for which no unit had a plan
 * @param ahead   add-ons that would have made a unit ready, the most visits for the money first
 * @param nobodys units that were never right for anybody, though held against needs
 * @param read    explainers opened
 * @param asked   questions about the work, as often as they were asked and answered
 * @param screens how long screens were looked at
 * @param printed how many lists
 * @param failed  failures by type
 */
public record Report(
        LocalDate from,
        LocalDate to,
        long visits,
        List<Wrong> wrong,
        List<Times<String>> sought,
        List<Times<CapabilityId>> unmet,
        List<Ahead> ahead,
        List<Nobodys> nobodys,
        List<Times<TopicId>> read,
        List<Asked> asked,
        List<Shown> screens,
        long printed,
        List<Times<String>> failed) {
    private static final long FEWEST = VisitBook.FEWEST;
    private static final double CENTS_OF_1000_DOLLARS = 100_000;

    /** Copies the lists. */
    public Report {
        wrong = List.copyOf(wrong);
        sought = List.copyOf(sought);
        unmet = List.copyOf(unmet);
        ahead = List.copyOf(ahead);
        nobodys = List.copyOf(nobodys);
        read = List.copyOf(read);
        asked = List.copyOf(asked);
        screens = List.copyOf(screens);
        failed = List.copyOf(failed);
    }

    /** Something, and how often. */
    public record Times<T>(T what, long times) {}

    /** A quiz question, and how many of those who answered had it wrong. */
    public record Wrong(QuizQuestion question, Share share) {}

    /** A question about the work, in how many visits it was put and answered. */
    public record Asked(QuestionId question, long asked, long answered) {}

    /** A screen, how often it was opened and for how many seconds on the average. */
    public record Shown(String screen, long times, double seconds) {}

    /** A unit that nobody could use, in how many visits it was looked at, and what was short most often. */
    public record Nobodys(Unit unit, long visits, List<Times<CapabilityId>> causes) {
        /** Copies the list. */
        public Nobodys {
            causes = List.copyOf(causes);
        }
    }

    /**
     * An add-on that would have made a unit ready, had it been fitted ahead.
     *
     * @param addOn  which
     * @param unit   on which unit
     * @param visits for how many
     * @param price  to fit it
     */
    public record Ahead(ItemId addOn, Unit unit, long visits, PriceRange price) {
        /** Visits for every thousand dollars, at the middle of the price. */
        public double visitsPer1000Dollars() {
            return visits * CENTS_OF_1000_DOLLARS / Math.max(1, price.middle().cents());
        }
    }

    /** What the counts of these days say, in this showroom as it is now. */
    public static Report of(Showroom showroom, Tally counts, LocalDate from, LocalDate to) {
        return new Report(from, to, shown(counts.count(Kind.VISIT, "")),
                wrong(showroom, counts),
                times(counts, Kind.NOT_FOUND).toList(),
                times(counts, Kind.UNMET)
                        .map(each -> new Times<>(new CapabilityId(each.what()), each.times())).toList(),
                ahead(showroom, counts), nobodys(showroom, counts),
                times(counts, Kind.READ).map(each -> new Times<>(new TopicId(each.what()), each.times())).toList(),
                asked(showroom, counts), screens(counts),
                shown(counts.count(Kind.PRINTED, "")),
                times(counts, Kind.FAILED).toList());
    }

    private static long shown(long count) {
        return count < FEWEST ? 0 : count;
    }

    private static Stream<Times<String>> times(Tally counts, Kind kind) {
        return counts.of(kind).entrySet().stream()
                .filter(entry -> entry.getValue() >= FEWEST)
                .map(entry -> new Times<>(entry.getKey().subject(), entry.getValue()))
                .sorted(Comparator.comparingLong((Times<String> each) -> -each.times()).thenComparing(Times::what));
    }

    private static List<Wrong> wrong(Showroom showroom, Tally counts) {
        List<Wrong> wrong = new ArrayList<>();
        for (QuizQuestion question : showroom.quiz().questions()) {
            String id = question.id().value();
            long count = counts.count(Kind.BELIEF_WRONG, id);
            long all = count + counts.count(Kind.BELIEF_RIGHT, id) + counts.count(Kind.BELIEF_UNSURE, id);
            if (count >= FEWEST) {
                wrong.add(new Wrong(question, new Share(count, all)));
            }
        }
        wrong.sort(Comparator.comparingDouble((Wrong each) -> -each.share().low())
                .thenComparing(each -> each.question().id().value()));
        return wrong;
    }

    private static List<Ahead> ahead(Showroom showroom, Tally counts) {
        Map<UnitId, Unit> units = units(showroom);
        List<Ahead> ahead = new ArrayList<>();
        counts.of(Kind.WOULD_READY).forEach((counter, count) -> {
            Optional<Unit> unit = Optional.ofNullable(units.get(new UnitId(counter.detail())));
            ItemId addOn = new ItemId(counter.subject());
            if (count >= FEWEST && unit.isPresent()) {
                showroom.catalogue().prices().findLater(addOn, unit.get().model().machineClass())
                        .ifPresent(price -> ahead.add(new Ahead(addOn, unit.get(), count, price)));
            }
        });
        ahead.sort(Comparator.comparingDouble((Ahead each) -> -each.visitsPer1000Dollars())
                .thenComparing(each -> each.unit().id().value())
                .thenComparing(each -> each.addOn().value()));
        return ahead;
    }

    private static List<Nobodys> nobodys(Showroom showroom, Tally counts) {
        List<Nobodys> nobodys = new ArrayList<>();
        units(showroom).forEach((id, unit) -> {
            long asked = counts.count(Kind.UNIT_ASKED, id.value());
            if (asked >= FEWEST && counts.count(Kind.UNIT_FITTED, id.value()) == 0) {
                nobodys.add(new Nobodys(unit, asked, causes(counts, id)));
            }
        });
        nobodys.sort(Comparator.comparingLong((Nobodys each) -> -each.visits())
                .thenComparing(each -> each.unit().id().value()));
        return nobodys;
    }

    private static List<Times<CapabilityId>> causes(Tally counts, UnitId unit) {
        return counts.of(Kind.UNIT_SHORT).entrySet().stream()
                .filter(entry -> entry.getKey().subject().equals(unit.value()) && entry.getValue() >= FEWEST)
                .map(entry -> new Times<>(new CapabilityId(entry.getKey().detail()), entry.getValue()))
                .sorted(Comparator.comparingLong((Times<CapabilityId> each) -> -each.times())
                        .thenComparing(each -> each.what().value()))
                .toList();
    }

    private static Map<UnitId, Unit> units(Showroom showroom) {
        Map<UnitId, Unit> units = new LinkedHashMap<>();
        showroom.units().forEach(unit -> units.put(unit.id(), unit));
        return units;
    }

    private static List<Asked> asked(Showroom showroom, Tally counts) {
        return showroom.questionnaire().questions().stream()
                .map(question -> new Asked(question.id(),
                        counts.count(Kind.ASKED, question.id().value()),
                        shown(counts.count(Kind.ANSWERED, question.id().value()))))
                .filter(each -> each.asked() >= FEWEST)
                .toList();
    }

    private static List<Shown> screens(Tally counts) {
        return times(counts, Kind.SHOWN)
                .map(each -> new Shown(each.what(), each.times(),
                        counts.count(Counter.of(Kind.SECONDS, each.what())) / (double) each.times()))
                .toList();
    }
}
