package fencerow.backoffice.document;

import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.OptionId;
import fencerow.wording.Texts;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What {@code questions} prints: the questions about the work, and what answers they take. Each may also be answered
 * {@code not-sure}, or left out.
 *
 * @param language  of the sentences, as a BCP 47 tag
 * @param questions in asking order
 */
public record QuestionsDocument(String language, List<QuestionEntry> questions) {
    /**
     * One question.
     *
     * @param id      its id
     * @param ask     the question, as a sentence
     * @param why     why it is asked
     * @param choose  {@code one} or {@code several} of the options, {@code jobs} (several, which are jobs), or
     *                {@code amount}
     * @param when    asked only if one of these was answered; empty for always
     * @param options what can be picked; empty for amounts
     * @param range   what amounts it takes; null where options are picked
     */
    public record QuestionEntry(
            String id,
            String ask,
            String why,
            String choose,
            List<WhenEntry> when,
            List<OptionEntry> options,
            Optional<RangeEntry> range) {}

    /**
     * Answers to another question that make this one be asked.
     *
     * @param question the other question
     * @param options  any of these
     */
    public record WhenEntry(String question, List<String> options) {}

    /**
     * Something to pick.
     *
     * @param id    its id
     * @param label as the shopper reads it
     * @param hint  a word more, where there is one
     */
    public record OptionEntry(String id, String label, Optional<String> hint) {}

    /**
     * The amounts a question takes.
     *
     * @param measures what is measured, such as {@code length}
     * @param unit     of the numbers here: an SI symbol, or {@code USD}
     * @param from     the least
     * @param to       the most
     * @param step     of the buttons
     * @param typical  common answers, rising
     */
    public record RangeEntry(
            String measures,
            String unit,
            BigDecimal from,
            BigDecimal to,
            BigDecimal step,
            List<BigDecimal> typical) {}

    /** Writes down the questions. */
    public static QuestionsDocument of(Questionnaire questionnaire, Texts texts) {
        return new QuestionsDocument(texts.language(), questionnaire.questions().stream()
                .map(question -> entry(question, questionnaire, texts))
                .toList());
    }

    private static QuestionEntry entry(Question question, Questionnaire questionnaire, Texts texts) {
        String key = "question." + question.id();
        List<OptionEntry> options = question.choose() == Question.Choose.JOBS
                ? questionnaire.jobs().stream()
                        .map(job -> option("job." + job.id(), job.id().value(), "name", texts))
                        .toList()
                : question.options().stream()
                        .map(each -> option(key + ".option." + each.id(), each.id().value(), "label", texts))
                        .toList();
        return new QuestionEntry(
                question.id().value(),
                texts.get(key + ".ask"),
                texts.get(key + ".why"),
                Words.id(question.choose()),
                new TreeMap<>(question.when()).entrySet().stream().map(QuestionsDocument::when).toList(),
                options,
                question.scale().map(QuestionsDocument::range));
    }

    private static OptionEntry option(String key, String id, String label, Texts texts) {
        return new OptionEntry(id, texts.get(key + "." + label), texts.find(key + ".hint"));
    }

    private static WhenEntry when(Map.Entry<?, List<OptionId>> condition) {
        return new WhenEntry(
                condition.getKey().toString(), condition.getValue().stream().map(OptionId::value).toList());
    }

    private static RangeEntry range(Question.Scale scale) {
        return new RangeEntry(
                scale.dimension().id(),
                scale.dimension().symbol(),
                Numbers.si(scale.from()),
                Numbers.si(scale.to()),
                Numbers.si(scale.step()),
                scale.typical().stream().map(typical -> Numbers.si(typical.value())).toList());
    }
}
