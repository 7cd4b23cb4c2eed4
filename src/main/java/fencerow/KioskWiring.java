package fencerow;

import fencerow.backoffice.FencerowCommand;
import fencerow.backoffice.Finders;
import fencerow.backoffice.Folders;
import fencerow.backoffice.KioskLauncher;
import fencerow.backoffice.PrintShop;
import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.LastGoodContent;
import fencerow.content.Problem;
import fencerow.content.Reading;
import fencerow.content.ShowroomLine;
import fencerow.desk.Settings;
import fencerow.desk.StaffLock;
import fencerow.kiosk.Kiosk;
import fencerow.kiosk.frame.ComeBack;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Search;
import fencerow.search.Finder;
import fencerow.search.Query;
import fencerow.search.Results;
import fencerow.visit.Showroom;
import fencerow.wording.PseudoLocale;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.function.UnaryOperator;

/** Wires the kiosk: content that can be shown, units of the stock book, search and paper over it. For any thread. */
final class KioskWiring implements KioskLauncher {
    private static final System.Logger LOG = System.getLogger(KioskWiring.class.getName());

    private static final String PICTURES = "unit-pictures";

    private final Clock clock;
    private final String window;
    private final UnaryOperator<Path> dataFolder;
    private final StaffLock codes;
    private Optional<CompletableFuture<StockRoom>> stock = Optional.empty();
    private Optional<Stocked> last = Optional.empty();
    private Optional<KioskPrinter> printing = Optional.empty();
    /** Where units' pictures are; the configuration's folder is known from the first reading on. */
    private Path photographs = Path.of(PICTURES);

    /**
     * Wires nothing yet.
     *
     * @param clock      tells when nobody is here any more, and dates lists
     * @param window     {@code WxH} for an ordinary window; blank for full screen
     * @param dataFolder where the database and the last good content are kept, by the configuration's folder
     */
    KioskWiring(Clock clock, String window, UnaryOperator<Path> dataFolder) {
        this.clock = clock;
        this.window = window;
        this.dataFolder = dataFolder;
        this.codes = new StaffLock(clock);
    }

    /**
     * What is shown, and what it was made from.
     *
     * @param asRead  without the stock book
     * @param list    the stock list that goes into the book; empty where the content is an older one
     * @param state   of the stock
     */
    private record Stocked(Premises asRead, Content content, Optional<Path> list, String state) {}

    @Override
    public int launch(Folders folders) throws NoScreenException {
        try {
            LogFiles.open(dataFolder.apply(folders.config()).resolve("log"), clock.getZone());
            var openings = new KioskFiles(this, folders);
            var steady = new SteadyClock(System::nanoTime);
            return switch (Kiosk.run(openings, SpeechEngine.installed(), steady, window)) {
                case CLOSED -> FencerowCommand.FINE;
                case AGAIN -> FencerowCommand.AGAIN;
                case HANGING -> FencerowCommand.HANGING;
            };
        } catch (UnsupportedOperationException e) {
            throw new NoScreenException("there is no screen to show the kiosk on (" + e.getMessage()
                    + "); start it where a desktop runs");
        } finally {
            close();
        }
    }

    /** Closes the database. */
    synchronized void close() {
        stock.ifPresent(room -> room.join().close());
        stock = Optional.empty();
    }

    /** What can be shown; where the content is broken, what was last good is shown and staff see what is wrong. */
    synchronized Opening open(Folders folders) {
        close();
        openStock(folders);
        Opening opening = read(folders);
        return opening instanceof Opening.Closed closed ? fallBack(closed, folders) : opening;
    }

    /** Reads the content and keeps it for when a later one is broken; says what is wrong where it cannot be shown. */
    synchronized Opening read(Folders folders) {
        openStock(folders);
        Reading<Content> reading = new ContentReader().read(folders.content(), folders.config(), folders.stock());
        if (reading instanceof Reading.Bad<Content> bad) {
            return new Opening.Closed(bad.problems().stream().map(Problem::toString).toList());
        }
        Content content = ((Reading.Good<Content>) reading).content();
        try {
            Premises premises = stocked(premises(content, folders.config(), List.of(), folders), content, folders,
                    Optional.of(folders.config().resolve("stock.csv")));
            keep(lastGood(folders), content, folders);
            return opened(premises);
        } catch (UncheckedIOException | IllegalArgumentException e) {
            return new Opening.Closed(List.of(String.valueOf(e.getMessage())));
        }
    }

    /** Opens the database beside the reading of the content; it is brought up to date if it must be. */
    private void openStock(Folders folders) {
        if (stock.isEmpty()) {
            Path data = dataFolder.apply(folders.config());
            stock = Optional.of(CompletableFuture.supplyAsync(() -> StockRoom.open(
                    data, ShowroomLine.database(folders.config()), ShowroomLine.stockInbox(folders.config()),
                    System.getenv(), clock)));
        }
    }

    /** What is shown now with another stock, where the stock has changed by anything but its file. */
    synchronized Optional<Premises> findRestocked() {
        last.filter(shown -> stock.isPresent()).ifPresent(shown -> stock.get().join().takeInbox(shown.content()));
        return last.filter(shown -> stock.isPresent())
                .filter(shown -> !stock.get().join().state().equals(shown.state()))
                .map(shown -> stocked(shown.asRead(), shown.content(), shown.list()));
    }

    private Premises stocked(Premises asRead, Content content, Folders folders, Optional<Path> list) {
        last = Optional.empty();
        photographs = folders.config().resolve(PICTURES);
        // Another stock list, asked for by name, is shown as it is.
        return folders.stock().isPresent() || stock.isEmpty() ? asRead : stocked(asRead, content, list);
    }

    private Premises stocked(Premises asRead, Content content, Optional<Path> list) {
        StockRoom room = stock.orElseThrow().join();
        StockRoom.Stocked now = room.look(content, list);
        last = Optional.of(new Stocked(asRead, content, list, now.state()));
        var pictures = new PictureFiles(photographs, now.pictures());
        List<String> problems = new ArrayList<>(now.problems());
        problems.addAll(pictures.problems());
        return asRead.with(now.showroom(), problems, room.desk(content), pictures)
                .over(printer(asRead, room, now.showroom()), search(content.with(now.showroom())));
    }

    private static ListPrinter printer(Premises asRead, StockRoom room, Showroom showroom) {
        return asRead.printer() instanceof KioskPrinter printer
                ? printer.with(showroom, room::recent)
                : asRead.printer();
    }

    /** What the kiosk greets with before anything is read. */
    GreetingFile greeting(Folders folders) {
        return new GreetingFile(dataFolder.apply(folders.config()));
    }

    private LastGoodContent lastGood(Folders folders) {
        return new LastGoodContent(dataFolder.apply(folders.config()).resolve("last-good"));
    }

    private Opening fallBack(Opening.Closed wrong, Folders folders) {
        Optional<LastGoodContent.Kept> kept = lastGood(folders).find();
        if (kept.isPresent()) {
            try {
                Content content = kept.get().content();
                return opened(stocked(premises(content, kept.get().config(), wrong.problems(), folders),
                        content, folders, Optional.empty()));
            } catch (UncheckedIOException | IllegalArgumentException e) {
                LOG.log(System.Logger.Level.WARNING, "The last good content cannot be shown any more", e);
            }
        }
        return wrong;
    }

    private static void keep(LastGoodContent lastGood, Content content, Folders folders) {
        try {
            lastGood.keep(content, folders.content(), folders.config(), folders.stock());
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "The content could not be kept for when a newer one is broken", e);
        }
    }

    /** Throws as {@link PrintShop#of} does, and an IllegalArgumentException if the language is not offered. */
    private Premises premises(Content read, Path config, List<String> problems, Folders folders) {
        boolean pseudo = folders.language().equals(Optional.of(PseudoLocale.LANGUAGE));
        Content content = pseudo ? read.withPseudoLocale() : read;
        PrintShop shop = PrintShop.of(content, config, clock);
        ForkJoinPool.commonPool().execute(shop::warmUp);
        Settings settings = folders.language().map(content.settings()::startingIn).orElse(content.settings());
        KioskPrinter printer = new KioskPrinter(
                shop, settings.paper(), dataFolder.apply(folders.config()), clock, printing);
        printing = Optional.of(printer);
        return new Premises(
                content.showroom(),
                content.texts(),
                content.libraries(),
                settings,
                search(content),
                printer,
                content.version(),
                problems,
                stock.orElseThrow().join(),
                comeBack(settings));
    }

    private Optional<ComeBack> comeBack(Settings settings) {
        return settings.comeBackDays().isPresent()
                ? stock.orElseThrow().join().comeBack(settings.comeBackDays().getAsInt(), codes)
                : Optional.empty();
    }

    private static Search search(Content content) {
        return new Index(content);
    }

    /** Makes its index, off whatever thread asks, when it is first asked for; what is never shown needs none. */
    private static final class Index implements Search {
        private final Content content;
        private Optional<CompletableFuture<Finder>> finder = Optional.empty();

        Index(Content content) {
            this.content = content;
        }

        synchronized void start() {
            if (finder.isEmpty()) {
                finder = Optional.of(CompletableFuture.supplyAsync(() -> Finders.of(content)));
            }
        }

        private synchronized CompletableFuture<Finder> started() {
            start();
            return finder.orElseThrow();
        }

        @Override
        public Results find(Query query) {
            return started().join().find(query);
        }
    }

    /** The index is made while the first screen is up. */
    private static Opening.Open opened(Premises premises) {
        if (premises.search() instanceof Index index) {
            index.start();
        }
        return new Opening.Open(premises);
    }
}
