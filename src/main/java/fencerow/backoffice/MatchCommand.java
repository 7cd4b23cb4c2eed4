package fencerow.backoffice;

import fencerow.backoffice.document.MatchDocument;
import fencerow.match.Ranking;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Holds the stock against a shopper's answers. */
@Command(name = "match", mixinStandardHelpOptions = true,
        description = "Holds every tractor in stock against a shopper's answers, best first.")
final class MatchCommand implements Callable<Integer> {
    private static final int MOST_IN_TEXT = 20;

    private final FencerowCommand top;

    @Option(names = "--answers", paramLabel = "FILE", required = true, description = "The shopper's answers.")
    private Optional<Path> answers = Optional.empty();

    @Option(names = "--top", paramLabel = "N",
            description = "Only the first N tractors. Default: 20, and all of them with --json.")
    private Optional<Integer> most = Optional.empty();

    MatchCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException {
        int units = most.orElse(top.isJson() ? Integer.MAX_VALUE : MOST_IN_TEXT);
        if (units < 1) {
            throw new WrongUseException("--top " + units + " shows nothing; give 1 or more");
        }
        Premises premises = top.open();
        Visit visit = top.shopper(premises, answers.orElseThrow(), Optional.empty());
        Ranking ranking = premises.showroom().ranking(visit);
        var document = MatchDocument.of(premises.showroom(), ranking, premises.phrases(), units);
        top.print(document, () -> MatchText.of(ranking, document, premises.phrases(), units));
        return FencerowCommand.FINE;
    }
}
