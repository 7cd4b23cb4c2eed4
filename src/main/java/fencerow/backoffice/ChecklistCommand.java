package fencerow.backoffice;

import fencerow.backoffice.document.ChecklistDocument;
import fencerow.printing.Printout;
import fencerow.printing.Sheet;
import fencerow.visit.Visit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Composes a shopper's own list to check on any tractor, and prints it into a PDF file. */
@Command(name = "checklist", mixinStandardHelpOptions = true,
        description = "Composes a shopper's own list to check on any tractor, and prints it into a PDF file.")
final class ChecklistCommand implements Callable<Integer> {
    private final FencerowCommand top;

    @Option(names = "--answers", paramLabel = "FILE", required = true, description = "The shopper's answers.")
    private Optional<Path> answers = Optional.empty();

    @Option(names = "--beliefs", paramLabel = "FILE", description = "The shopper's answers to the quiz.")
    private Optional<Path> beliefs = Optional.empty();

    @Option(names = "--out", paramLabel = "FILE.pdf",
            description = "Where to print it. May be left out with --json.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--sheets", paramLabel = "SHEET", split = ",",
            description = "What to print, such as further-lines. Default: list,comparison.")
    private List<String> sheets = List.of(Sheet.LIST.id(), Sheet.COMPARISON.id());

    @Option(names = "--large-print", description = "In large type, on as many pages as it needs.")
    private boolean largePrint;

    ChecklistCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException, FailedException {
        if (out.isEmpty() && !top.isJson()) {
            throw new WrongUseException("there is nowhere to print to; give --out FILE.pdf, or --json");
        }
        List<Sheet> wanted = wanted();
        Premises premises = top.openStocked();
        Visit visit = top.shopper(premises, answers.orElseThrow(), beliefs);
        Printout printout = print(premises, visit, wanted);
        if (out.isPresent()) {
            write(printout.pdf(), out.get());
        }
        top.print(ChecklistDocument.of(printout.lines(), premises.phrases()), () ->
                ChecklistText.of(printout.lines(), premises.phrases()) + saved(printout, premises));
        return FencerowCommand.FINE;
    }

    private List<Sheet> wanted() throws WrongUseException {
        List<Sheet> wanted = new ArrayList<>();
        for (String id : sheets) {
            wanted.add(Arrays.stream(Sheet.values())
                    .filter(sheet -> sheet.id().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new WrongUseException("there is no sheet [" + id + "]; use one of "
                            + String.join(", ", Arrays.stream(Sheet.values()).map(Sheet::id).toList()))));
        }
        return wanted;
    }

    private Printout print(Premises premises, Visit visit, List<Sheet> wanted) throws FailedException {
        try {
            PrintShop shop =
                    PrintShop.of(premises.content(), top.folders().config(), top.surroundings().clock());
            boolean metric = premises.content().settings().metric();
            return shop.print(visit, premises.language(), metric, shop.format(largePrint), wanted);
        } catch (UncheckedIOException | IllegalArgumentException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    private static void write(byte[] pdf, Path file) throws FailedException {
        try {
            Files.write(file, pdf);
        } catch (IOException e) {
            throw new FailedException(file + " cannot be written (" + e.getClass().getSimpleName()
                    + "); check that its folder exists and that this user may write there");
        }
    }

    private String saved(Printout printout, Premises premises) {
        return "\n" + premises.texts().get("backoffice.checklist.saved", Map.of(
                "file", out.orElseThrow(), "pages", printout.pages(), "lines", printout.lines().size())) + "\n";
    }
}
