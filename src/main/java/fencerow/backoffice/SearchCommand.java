package fencerow.backoffice;

import fencerow.backoffice.document.QualityDocument;
import fencerow.backoffice.document.SearchDocument;
import fencerow.search.Judged;
import fencerow.search.Quality;
import fencerow.search.Query;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds explainers, trade words, jobs, attachments, units and quiz questions. */
@Command(name = "search", mixinStandardHelpOptions = true,
        description = "Finds explainers, trade words, jobs, attachments, tractors and quiz questions.")
final class SearchCommand implements Callable<Integer> {
    private static final int MOST = 20;

    private final FencerowCommand top;

    @Parameters(paramLabel = "WORDS", arity = "0..*", description = "What to look for, in any words.")
    private List<String> words = List.of();

    @Option(names = "--top", paramLabel = "N", description = "Only the first N hits. Default: 20.")
    private int most = MOST;

    @Option(names = "--evaluate", paramLabel = "FILE",
            description = "Say how good the hits are on judged queries: query<TAB>language<TAB>id:grade,...")
    private Optional<Path> evaluate = Optional.empty();

    SearchCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException, FailedException {
        if (evaluate.isPresent() != words.isEmpty()) {
            throw new WrongUseException("search takes either WORDS or --evaluate FILE; give one of them");
        }
        if (most < 1) {
            throw new WrongUseException("--top " + most + " shows nothing; give 1 or more");
        }
        Premises premises = top.openStocked();
        return evaluate.isPresent() ? evaluate(premises, evaluate.get()) : search(premises, String.join(" ", words));
    }

    private int search(Premises premises, String typed) {
        Query query = Query.of(typed, premises.language()).withLimit(most);
        var document = SearchDocument.of(premises.language(), typed, Finders.of(premises.content()).find(query));
        top.print(document, () -> text(document, premises));
        return document.hits().isEmpty() ? FencerowCommand.NOT_FINE : FencerowCommand.FINE;
    }

    private static String text(SearchDocument document, Premises premises) {
        var sheet = new TextSheet();
        if (document.hits().isEmpty()) {
            sheet.line(0, premises.texts().get("backoffice.search.nothing", Map.of("words", document.words())));
        }
        document.didYouMean().ifPresent(right ->
                sheet.line(0, premises.texts().get("backoffice.search.did-you-mean", Map.of("words", right))));
        write(document.hits(), premises, sheet);
        if (!document.nearest().isEmpty()) {
            sheet.heading(premises.texts().get("backoffice.search.nearest"));
            write(document.nearest(), premises, sheet);
        }
        return sheet.toString();
    }

    private static void write(List<SearchDocument.HitEntry> hits, Premises premises, TextSheet sheet) {
        for (SearchDocument.HitEntry hit : hits) {
            String kind = premises.texts().get("backoffice.search.kind." + hit.kind());
            sheet.line(0, hit.title() + "  [" + kind + " " + hit.id() + "]");
            if (!hit.excerpt().isEmpty()) {
                sheet.line(4, (hit.section().isEmpty() ? "" : hit.section() + ": ") + hit.excerpt());
            }
        }
    }

    private int evaluate(Premises premises, Path file) throws FailedException {
        List<Judged> judged = judged(file);
        var document = QualityDocument.of(Quality.of(Finders.of(premises.content()), judged));
        top.print(document, () -> new TextSheet().rows(0, List.of(
                List.of("queries", Integer.toString(document.queries())),
                List.of("MRR", document.mrr().toPlainString()),
                List.of("nDCG@10", document.ndcg().toPlainString()),
                List.of("recall@10", document.recall().toPlainString()),
                List.of("zero results", document.zeroResults().toPlainString()))).toString());
        return FencerowCommand.FINE;
    }

    private static List<Judged> judged(Path file) throws FailedException {
        try {
            return Judged.read(file.toString(), Files.readAllLines(file));
        } catch (IOException e) {
            throw new FailedException(file + ":1: the file cannot be read (" + e.getClass().getSimpleName()
                    + "); check its name, and that it is UTF-8 text this user may read");
        } catch (IllegalArgumentException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }
}
