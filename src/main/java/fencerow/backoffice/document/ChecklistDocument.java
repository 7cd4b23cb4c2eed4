package fencerow.backoffice.document;

import fencerow.checklist.Because;
import fencerow.checklist.ChecklistLine;
import fencerow.checklist.LineNumber;
import fencerow.wording.Labels;
import fencerow.wording.Phrases;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What {@code checklist} prints: one shopper's lines to check on any tractor.
 *
 * @param language of the sentences, as a BCP 47 tag
 * @param lines    lines of page one, then its signs to walk away, then those of the further sheet; each in
 *                 walk-around order
 */
public record ChecklistDocument(String language, List<LineEntry> lines) {
    /** The page that holds the lines with the most at stake, and the signs to walk away. */
    public static final int FIRST_PAGE = 1;
    /** The page that the lines without room on page one start on; page two is for comparing tractors. */
    public static final int FURTHER_PAGE = 3;

    /**
     * One line.
     *
     * @param id          of the line; the feature's where it is about one
     * @param feature     the feature it is about, where it is about one
     * @param stop        where on the walk around the tractor it is checked
     * @param what        to check
     * @param how         to check it in seconds, the number included
     * @param number      of this shopper's own that it is checked against, where their work says so
     * @param good        what good looks like
     * @param bad         what bad looks like, or when to walk away
     * @param atStakeLow  dollars that being wrong costs this shopper
     * @param atStakeHigh likewise
     * @param jobAtStake  whether being wrong can cost the job itself
     * @param walkAway    whether bad is a sign to stop and leave
     * @param because     why it is on this list; at least one
     * @param page        where it is printed, from 1
     */
    public record LineEntry(
            String id,
            Optional<String> feature,
            String stop,
            String what,
            String how,
            Optional<NumberEntry> number,
            String good,
            String bad,
            BigDecimal atStakeLow,
            BigDecimal atStakeHigh,
            boolean jobAtStake,
            boolean walkAway,
            List<BecauseEntry> because,
            int page) {}

    /**
     * A number to check against.
     *
     * @param kind {@code lift}, {@code ballast}, {@code height}, {@code pto-power}, {@code mass}, {@code mowing-width},
     *             {@code loader-height}, {@code gate-width}, {@code hitch-lift} or {@code oil-flow}
     * @param low  the least; depends on the machine where it is not the same as the most
     * @param high the most
     * @param unit an SI symbol
     * @param text that, as a sentence
     */
    public record NumberEntry(String kind, BigDecimal low, BigDecimal high, String unit, String text) {
        private static NumberEntry of(LineNumber number, String text) {
            return new NumberEntry(number.kind().id(), Numbers.si(number.amount().low()),
                    Numbers.si(number.amount().high()), number.amount().low().dimension().symbol(), text);
        }
    }

    /**
     * Why a line is on the list.
     *
     * @param kind     {@code your-work}, {@code wrong-belief}, {@code unsure}, {@code for-everyone},
     *                 {@code used-machine} or {@code new-machine}
     * @param need     id of the need, where the shopper's work is why
     * @param question id of the quiz question, where a belief is why
     * @param reason   that, as a sentence
     */
    public record BecauseEntry(String kind, Optional<String> need, Optional<String> question, String reason) {
        private static BecauseEntry of(Because because, Phrases phrases) {
            Optional<String> need = because instanceof Because.YourWork work
                    ? Optional.of(work.requirement().id())
                    : Optional.empty();
            Optional<String> question = Optional.empty();
            if (because instanceof Because.WrongBelief wrong) {
                question = Optional.of(wrong.question().id().value());
            } else if (because instanceof Because.Unsure unsure) {
                question = Optional.of(unsure.question().id().value());
            }
            return new BecauseEntry(because.id(), need, question, phrases.because(because));
        }
    }

    /** Writes down a list. */
    public static ChecklistDocument of(List<ChecklistLine> lines, Phrases phrases) {
        return new ChecklistDocument(
                phrases.texts().language(), lines.stream().map(line -> entry(line, phrases)).toList());
    }

    private static LineEntry entry(ChecklistLine line, Phrases phrases) {
        Labels labels = phrases.labels();
        return new LineEntry(
                line.id(),
                line.template().feature().map(Object::toString),
                line.template().stop().id(),
                labels.lineWhat(line),
                phrases.how(line),
                line.number().map(number -> NumberEntry.of(number, phrases.number(line).orElse(""))),
                labels.lineGood(line),
                labels.lineBad(line),
                Numbers.dollars(line.atStake().money().low()),
                Numbers.dollars(line.atStake().money().high()),
                line.atStake().job(),
                line.template().walkAway(),
                line.because().stream().map(because -> BecauseEntry.of(because, phrases)).toList(),
                line.place() == ChecklistLine.Place.FURTHER_SHEET ? FURTHER_PAGE : FIRST_PAGE);
    }
}
