package fencerow.visit;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Figure;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where a calculation takes a number from, so that nobody has to give it twice. */
public sealed interface Prefill {
    /**
     * The shopper's answer.
     *
     * @param question asks for the amount, or for one of the options
     * @param options  what picking an option comes to; empty where the question asks for the amount itself
     */
    record FromAnswer(QuestionId question, Map<OptionId, Amount> options) implements Prefill {
        /** Copies the options. */
        public FromAnswer {
            options = Map.copyOf(options);
        }

        Optional<Amount> find(Answers answers) {
            return answers.find(question).flatMap(this::amount);
        }

        private Optional<Amount> amount(Answer answer) {
            if (answer instanceof Answer.Measured measured) {
                return Optional.of(measured.amount());
            }
            List<OptionId> chosen = answer instanceof Answer.Chosen picked ? picked.options() : List.of();
            return chosen.stream().flatMap(option -> Optional.ofNullable(options.get(option)).stream()).findFirst();
        }
    }

    /**
     * The data sheet of the tractor in view.
     *
     * @param figure of the sheet
     * @param plus   added to it, to get from one point of the tractor to another
     */
    record FromFigure(Figure figure, Amount plus) implements Prefill {
        Optional<Amount> find(Model model) {
            return model.findFigure(figure).map(amount -> new Amount(amount.dimension(), amount.si() + plus.si()));
        }
    }
}
