package fencerow.wording;

import fencerow.needs.Answer;
import fencerow.needs.Question;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.OptionId;
import java.util.List;
import java.util.Map;

/**
 * What a shopper can answer to a question about the work, and did, as they read it.
 *
 * @param phrases sentences of the language
 * @param metric  whether amounts are shown in metric units
 */
public record AnswerWords(Phrases phrases, boolean metric) {
    private static final double INCH = 0.0254;
    private static final double FOOT = 12 * INCH;
    /** Scales of a length that go beyond this are those of doors and gates, which people know in feet. */
    private static final double LONGEST_IN_INCHES = 8 * FOOT;

    /** The question itself. */
    public String ask(Question question) {
        return phrases.texts().get("question." + question.id() + ".ask");
    }

    /** Why it is asked. */
    public String why(Question question) {
        return phrases.texts().get("question." + question.id() + ".why");
    }

    /** One of its options; a job by its name. */
    public String option(Question question, OptionId option) {
        return question.choose() == Question.Choose.JOBS
                ? phrases.texts().get("job." + option + ".name")
                : phrases.texts().get("question." + question.id() + ".option." + option + ".label");
    }

    /** An amount, in the unit in which the question thinks. */
    public String amount(Question question, Amount amount) {
        boolean inFeet = !metric && amount.dimension() == Dimension.LENGTH && amount.si() >= FOOT
                && question.scale().filter(scale -> scale.to().si() > LONGEST_IN_INCHES).isPresent();
        if (!inFeet) {
            return phrases.amount(amount);
        }
        long inches = Math.round(amount.si() / INCH);
        return phrases.texts().get(inches % 12 == 0 ? "length.feet" : "length.feet-and-inches",
                Map.of("feet", inches / 12, "inches", inches % 12));
    }

    /** An answer given. */
    public String answer(Question question, Answer answer) {
        if (answer instanceof Answer.Measured measured) {
            return amount(question, measured.amount());
        }
        if (answer instanceof Answer.Chosen chosen) {
            List<String> picked =
                    chosen.options().stream().map(option -> option(question, option)).toList();
            return picked.isEmpty() ? phrases.texts().get("answer.none") : phrases.list(picked);
        }
        return phrases.texts().get("answer.not-sure");
    }
}
