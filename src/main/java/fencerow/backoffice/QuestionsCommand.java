package fencerow.backoffice;

import fencerow.backoffice.document.QuestionsDocument;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Lists the questions about the work. */
@Command(name = "questions", mixinStandardHelpOptions = true,
        description = "Lists the questions about the work, with the answers that match and checklist take.")
final class QuestionsCommand implements Callable<Integer> {
    private final FencerowCommand top;

    QuestionsCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException {
        Premises premises = top.open();
        var questionnaire = premises.showroom().questionnaire();
        var document = QuestionsDocument.of(questionnaire, premises.texts());
        top.print(document, () -> QuestionsText.of(document, questionnaire, premises.phrases()));
        return FencerowCommand.FINE;
    }
}
