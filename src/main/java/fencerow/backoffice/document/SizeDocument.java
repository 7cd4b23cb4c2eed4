package fencerow.backoffice.document;

import fencerow.sizing.Limit;
import fencerow.sizing.catalogue.Result;
import fencerow.terms.Amount;
import fencerow.terms.Spread;
import fencerow.wording.Texts;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * What {@code size NAME} prints: a result, and all that can be asked about it.
 *
 * @param calculation its id
 * @param amounts     what was found; ranges where inputs are ranges
 * @param findings    answers that are no numbers
 * @param limits      ids of the rules that decided
 * @param inputs      the numbers used, given or preset
 * @param choices     the options used
 * @param sources     where formula and figures come from
 * @param cautions    what stands beside the numbers
 * @param warnings    what is suspicious about an input or a result
 */
public record SizeDocument(
        String calculation,
        List<RangeEntry> amounts,
        List<FindingEntry> findings,
        List<String> limits,
        List<RangeEntry> inputs,
        List<ChoiceEntry> choices,
        List<SourceEntry> sources,
        List<CautionEntry> cautions,
        List<WarningEntry> warnings) {
    /**
     * An amount, or a range.
     *
     * @param id       of the input or output
     * @param low      the least
     * @param high     the most; the same for a single amount
     * @param measures what is measured
     * @param unit     an SI symbol, {@code 1}, {@code USD} or empty
     */
    public record RangeEntry(String id, BigDecimal low, BigDecimal high, String measures, String unit) {
        private static List<RangeEntry> of(Map<String, Spread<Amount>> ranges) {
            return ranges.entrySet().stream()
                    .map(range -> new RangeEntry(
                            range.getKey(),
                            Numbers.si(range.getValue().low()),
                            Numbers.si(range.getValue().high()),
                            range.getValue().low().dimension().id(),
                            range.getValue().low().dimension().symbol()))
                    .toList();
        }
    }

    /**
     * An answer that is no number.
     *
     * @param about what it is about
     * @param found what was found
     */
    public record FindingEntry(String about, String found) {}

    /**
     * An option used.
     *
     * @param id     of the parameter
     * @param option its id
     */
    public record ChoiceEntry(String id, String option) {}

    /**
     * Where something comes from.
     *
     * @param id       of the source
     * @param standing {@code published}, {@code from-memory}, {@code common-practice} or {@code arithmetic}
     * @param citation the publication
     */
    public record SourceEntry(String id, String standing, String citation) {}

    /**
     * Something suspicious.
     *
     * @param kind  what
     * @param about id of the input or output
     * @param text  that, in words
     */
    public record WarningEntry(String kind, String about, String text) {}

    /** Writes down a result. */
    public static SizeDocument of(Result result, Texts texts) {
        return new SizeDocument(
                result.calculation(),
                RangeEntry.of(result.amounts()),
                result.findings().stream().map(each -> new FindingEntry(each.about(), each.id())).toList(),
                result.limits().stream().map(Limit::id).toList(),
                RangeEntry.of(result.inputs()),
                result.choices().entrySet().stream()
                        .map(choice -> new ChoiceEntry(choice.getKey(), choice.getValue()))
                        .toList(),
                result.sources().stream()
                        .map(source -> new SourceEntry(source.id(), source.standing().id(), source.citation()))
                        .toList(),
                result.cautions().stream()
                        .map(caution ->
                                new CautionEntry(caution.id(), texts.get("sizing.caution." + caution.id())))
                        .toList(),
                result.warnings().stream()
                        .map(warning -> new WarningEntry(
                                warning.kind().id(),
                                warning.about(),
                                texts.get("sizing.warning." + warning.kind().id())))
                        .toList());
    }
}
