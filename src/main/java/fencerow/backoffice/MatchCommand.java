package fencerow.backoffice;

import fencerow.backoffice.document.MatchDocument;
import fencerow.backoffice.document.SimulationDocument;
import fencerow.match.NextQuestion;
import fencerow.match.Ranking;
import fencerow.match.Simulation;
import fencerow.terms.Money;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Holds the stock against a shopper's answers. */
@Command(name = "match", mixinStandardHelpOptions = true,
        description = "Holds every tractor in stock against a shopper's answers, best first.")
final class MatchCommand implements Callable<Integer> {
    private final FencerowCommand top;

    @Option(names = "--answers", paramLabel = "FILE", description = "The shopper's answers.")
    private Optional<Path> answers = Optional.empty();

    @Option(names = "--trade-in", paramLabel = "DOLLARS",
            description = "What is offered here for the shopper's own tractor; taken off each ready-to-work price.")
    private long tradeIn;

    @Option(names = "--simulate", paramLabel = "N",
            description = "In place of answers: makes up N shoppers and reports how many questions they are asked. "
                    + "Takes some seconds for each.")
    private Optional<Integer> simulated = Optional.empty();

    @Option(names = "--seed", paramLabel = "S", description = "With --simulate: makes up other shoppers. Default: 1.")
    private long seed = 1;

    @Option(names = "--top", paramLabel = "N",
            description = "Only the first N tractors; how many there are is said. Default: ${DEFAULT-VALUE}.",
            defaultValue = "20")
    private int most;

    MatchCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException, FailedException {
        if (answers.isPresent() == simulated.isPresent()) {
            throw new WrongUseException("give either --answers FILE or --simulate N");
        }
        if (simulated.isPresent()) {
            return simulate(simulated.get());
        }
        if (most < 1) {
            throw new WrongUseException("--top " + most + " shows nothing; give 1 or more");
        }
        Premises premises = top.openStocked();
        if (tradeIn < 0) {
            throw new WrongUseException("--trade-in " + tradeIn + " is negative; give 0 or more dollars");
        }
        Visit visit = top.shopper(premises, answers.orElseThrow(), Optional.empty())
                .offered(Money.ofDollars(tradeIn));
        Ranking ranking = premises.showroom().ranking(visit);
        var document = MatchDocument.of(premises.showroom(), visit, ranking, premises.phrases(), most);
        top.print(document, () -> MatchText.of(ranking, document, premises.phrases(), most));
        return FencerowCommand.FINE;
    }

    private int simulate(int shoppers) throws UnreadableException, WrongUseException, FailedException {
        if (shoppers < 1) {
            throw new WrongUseException("--simulate " + shoppers + " makes up nobody; give 1 or more");
        }
        Premises premises = top.openStocked();
        Showroom showroom = premises.showroom();
        var simulation = new Simulation(NextQuestion.usual(showroom.questionnaire()));
        var document = SimulationDocument.of(simulation.of(showroom.lot(), shoppers, seed), seed);
        top.print(document, () -> premises.texts().get("simulation.report", Map.of(
                "shoppers", document.shoppers(),
                "median", document.askedMedian(),
                "least", document.askedLeast(),
                "most", document.askedMost(),
                "mean", document.askedMean(),
                "applying", document.applyingMean(),
                "same", document.sameFirst())) + "\n");
        return FencerowCommand.FINE;
    }
}
