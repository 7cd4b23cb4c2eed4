package fencerow.backoffice;

import fencerow.backoffice.document.Json;
import fencerow.content.AnswersReader;
import fencerow.content.BeliefsReader;
import fencerow.content.Problem;
import fencerow.content.Reading;
import fencerow.content.ShowroomLine;
import fencerow.desk.NotKeptException;
import fencerow.needs.Answers;
import fencerow.quiz.Beliefs;
import fencerow.storage.Server;
import fencerow.storage.Store;
import fencerow.storage.UnusableStoreException;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/**
 * The command line. Without a command it opens the kiosk.
 *
 * <p>Results go to standard output, complaints to standard error. Exit codes: {@link #FINE}, {@link #NOT_FINE},
 * {@link #WRONG_USE}; of the kiosk also {@link #AGAIN}, {@link #HANGING}.
 */
@Command(
        name = "fencerow",
        mixinStandardHelpOptions = true,
        description = "What is standard on a tractor, which one here does the work, and what to check before you buy.",
        synopsisSubcommandLabel = "[COMMAND]",
        footer = {"", "Without a command, the kiosk opens.",
            "Exit codes: 0 fine; 1 something is wrong in a file, or nothing was found; 2 wrong use;",
            "75 and 76 the kiosk asks to be started again."})
public final class FencerowCommand implements Callable<Integer> {
    /** Exit code: all went well. */
    public static final int FINE = 0;
    /** Exit code: something is wrong in a file, or nothing was found. */
    public static final int NOT_FINE = 1;
    /** Exit code: the command line itself is wrong. */
    public static final int WRONG_USE = 2;
    /** Exit code: the kiosk cannot go on as it is; start it again. */
    public static final int AGAIN = 75;
    /** Exit code: the same, and its screen does not answer. */
    public static final int HANGING = 76;

    private final Surroundings surroundings;

    @Option(names = "--content", paramLabel = "DIR", scope = ScopeType.INHERIT,
            description = "Folder of what is true of the trade. Default: content.")
    private Optional<Path> content = Optional.empty();

    @Option(names = "--config", paramLabel = "DIR", scope = ScopeType.INHERIT,
            description = "Folder of what the showroom sets. Default: kiosk-config.")
    private Optional<Path> config = Optional.empty();

    @Option(names = "--stock", paramLabel = "FILE.csv", scope = ScopeType.INHERIT,
            description = "Stock list to use in place of the stock book and the configuration's list.")
    private Optional<Path> stock = Optional.empty();

    @Option(names = "--language", paramLabel = "TAG", scope = ScopeType.INHERIT,
            description = "Language of the words. Default: the showroom's first.")
    private Optional<String> language = Optional.empty();

    @Option(names = "--json", scope = ScopeType.INHERIT, description = "Print one JSON document.")
    private boolean json;

    FencerowCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /**
     * Runs one command.
     *
     * @param arguments as typed
     * @return the exit code
     */
    public static int run(Surroundings surroundings, String... arguments) {
        int code = commandLine(surroundings).execute(arguments);
        surroundings.out().flush();
        surroundings.err().flush();
        return code;
    }

    private static CommandLine commandLine(Surroundings surroundings) {
        var top = new FencerowCommand(surroundings);
        return new CommandLine(top)
                .addSubcommand(new KioskCommand(top))
                .addSubcommand(new CheckCommand(top))
                .addSubcommand(new DoctorCommand(top))
                .addSubcommand(new QuestionsCommand(top))
                .addSubcommand(new SearchCommand(top))
                .addSubcommand(new MatchCommand(top))
                .addSubcommand(new ChecklistCommand(top))
                .addSubcommand(new SizeCommand(top))
                .addSubcommand(new CommandLine(new StockCommand())
                        .addSubcommand(new StockImportCommand(top))
                        .addSubcommand(new StockExportCommand(top)))
                .addSubcommand(new CommandLine(new StoreCommand())
                        .addSubcommand(new StoreMigrateCommand(top))
                        .addSubcommand(new StoreMoveCommand(top)))
                .addSubcommand(new ReportCommand(top))
                .addSubcommand(new PinCommand(top))
                .addSubcommand(new CommandLine(new TranslationsCommand()).addSubcommand(new AcceptCommand(top)))
                .addSubcommand(new CommandLine.HelpCommand())
                .setOut(surroundings.out())
                .setErr(surroundings.err())
                .setParameterExceptionHandler(Complaints::wrongUse)
                .setExecutionExceptionHandler(Complaints::failed);
    }

    @Override
    public Integer call() throws WrongUseException, FailedException {
        return launchKiosk();
    }

    int launchKiosk() throws WrongUseException, FailedException {
        if (json) {
            throw new WrongUseException("the kiosk shows screens and prints no document; leave --json out");
        }
        try {
            return surroundings.kiosk().launch(folders());
        } catch (KioskLauncher.NoScreenException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        } catch (IllegalArgumentException e) {
            throw new WrongUseException(String.valueOf(e.getMessage()));
        }
    }

    boolean isJson() {
        return json;
    }

    Surroundings surroundings() {
        return surroundings;
    }

    Folders folders() {
        Folders usual = Folders.below(surroundings.home());
        return new Folders(content.orElse(usual.content()), config.orElse(usual.config()), stock, language);
    }

    /** Reads content and configuration. */
    Premises open() throws UnreadableException, WrongUseException {
        return Premises.read(surroundings.reader(), folders());
    }

    /**
     * The same with the units that the kiosk shows: those of the stock book where there is one, unless a stock list is
     * asked for by name. Which it is goes to standard error where it is the book.
     */
    Premises openStocked() throws UnreadableException, WrongUseException, FailedException {
        Premises premises = open();
        Path book = surroundings.dataFolder().apply(folders().config()).resolve(Store.FILE);
        if (stock.isPresent() || ShowroomLine.database(folders().config()).isEmpty() && !Files.isRegularFile(book)) {
            return premises;
        }
        try (Store store = openStore()) {
            Premises booked = booked(premises, store);
            surroundings.err().println("stock: " + booked.showroom().units().size() + " units of the stock book");
            return booked;
        } catch (NotKeptException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    /** The same with the units of the stock book; what cannot be read there goes to standard error. */
    Premises booked(Premises premises, Store store) {
        LocalDate today = LocalDate.now(surroundings.clock());
        var booked = premises.content().units().read(store.stock().entries().stream()
                .filter(entry -> entry.sale().isShown(today))
                .map(entry -> entry.row())
                .toList());
        booked.problems().forEach(surroundings.err()::println);
        return premises.with(booked.units());
    }

    /** Opens the database of the data folder; what it has to say of itself goes to standard error. */
    Store openStore() throws FailedException {
        try {
            Store store = Store.open(dataFolder(), server(), surroundings.clock());
            store.notices().forEach(surroundings.err()::println);
            if (store.findTrouble().isPresent()) {
                store.close();
                throw new FailedException("without the server that kiosks share this cannot be done");
            }
            return store;
        } catch (UnusableStoreException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    Path dataFolder() {
        return surroundings.dataFolder().apply(folders().config());
    }

    /** The server that the configuration names, if it names one. */
    private Optional<Server> server() throws UnusableStoreException {
        return Server.find(
                ShowroomLine.database(folders().config()), surroundings.machine().environment(), dataFolder());
    }

    /** The server that the configuration names. */
    Server getServer() throws UnusableStoreException, FailedException {
        return server().orElseThrow(() -> new FailedException(folders().config().resolve("showroom.yaml")
                + ": no server is named; write its URL behind database:"));
    }

    /** Reads what a shopper answered; warnings go to standard error. */
    Visit shopper(Premises premises, Path answers, Optional<Path> beliefs) throws UnreadableException {
        Showroom showroom = premises.showroom();
        Reading<Answers> work = new AnswersReader(showroom.questionnaire()).read(answers);
        work.warnings().forEach(this::warn);
        Visit visit = Visit.NEW;
        for (var answer : UnreadableException.orGood(work).byQuestion().entrySet()) {
            visit = visit.answered(answer.getKey(), answer.getValue());
        }
        if (beliefs.isPresent()) {
            Reading<Beliefs> quiz = new BeliefsReader(showroom.quiz()).read(beliefs.get());
            quiz.warnings().forEach(this::warn);
            for (var belief : UnreadableException.orGood(quiz).byQuestion().entrySet()) {
                visit = visit.believed(belief.getKey(), belief.getValue());
            }
        }
        return visit;
    }

    private void warn(Problem warning) {
        surroundings.err().println(warning.place() + ": warning: " + warning.what() + "; " + warning.whatToDo());
    }

    /** Prints a document with {@code --json}, else the text. */
    void print(Record document, Supplier<String> text) {
        surroundings.out().print(json ? Json.text(document) : text.get());
    }
}
