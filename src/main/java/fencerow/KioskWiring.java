package fencerow;

import fencerow.backoffice.Finders;
import fencerow.backoffice.Folders;
import fencerow.backoffice.KioskLauncher;
import fencerow.backoffice.PrintShop;
import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.LastGoodContent;
import fencerow.content.Problem;
import fencerow.content.Reading;
import fencerow.desk.Settings;
import fencerow.kiosk.Kiosk;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Search;
import fencerow.search.Finder;
import fencerow.search.Hit;
import fencerow.search.Kind;
import fencerow.search.Query;
import fencerow.wording.PseudoLocale;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.UnaryOperator;

/**
 * Wires the kiosk: content that can be shown, the units of the stock book, search and paper over it.
 */
final class KioskWiring implements KioskLauncher {
    private static final System.Logger LOG = System.getLogger(KioskWiring.class.getName());

    private final Clock clock;
    private final String window;
    private final UnaryOperator<Path> dataFolder;
    private Optional<StockRoom> room = Optional.empty();

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
    }

    @Override
    public int launch(Folders folders) throws NoScreenException {
        try {
            Kiosk.run(() -> open(folders), clock, window);
        } catch (UnsupportedOperationException e) {
            throw new NoScreenException("there is no screen to show the kiosk on (" + e.getMessage()
                    + "); start it where a desktop runs");
        } finally {
            close();
        }
        return 0;
    }

    /** Closes the database. */
    synchronized void close() {
        room.ifPresent(StockRoom::close);
        room = Optional.empty();
    }

    /**
     * Reads the content; where it is broken, what was last good is shown and staff see what is wrong. The database is
     * opened meanwhile, and brought up to date if it must be.
     */
    synchronized Opening open(Folders folders) {
        close();
        Path data = dataFolder.apply(folders.config());
        var opened = CompletableFuture.supplyAsync(() -> StockRoom.open(data, clock));
        try {
            return open(folders, data, opened);
        } finally {
            room = Optional.of(opened.join());
        }
    }

    private Opening open(Folders folders, Path data, CompletableFuture<StockRoom> stock) {
        var lastGood = new LastGoodContent(data.resolve("last-good"));
        Reading<Content> reading = new ContentReader().read(folders.content(), folders.config(), folders.stock());
        if (reading instanceof Reading.Bad<Content> bad) {
            return fallBack(lastGood, bad.problems().stream().map(Problem::toString).toList(), folders, data, stock);
        }
        Content content = ((Reading.Good<Content>) reading).content();
        try {
            Optional<Path> list = Optional.of(folders.config().resolve("stock.csv"));
            Premises premises = stocked(new Shown(content, folders.config(), list, List.of()), folders, data,
                    stock.join());
            keep(lastGood, content, folders);
            return new Opening.Open(premises);
        } catch (UncheckedIOException | IllegalArgumentException e) {
            return fallBack(lastGood, List.of(String.valueOf(e.getMessage())), folders, data, stock);
        }
    }

    private Opening fallBack(LastGoodContent lastGood, List<String> problems, Folders folders, Path data,
            CompletableFuture<StockRoom> stock) {
        Optional<LastGoodContent.Kept> kept = lastGood.find();
        if (kept.isPresent()) {
            try {
                var shown = new Shown(kept.get().content(), kept.get().config(), Optional.empty(), problems);
                return new Opening.Open(stocked(shown, folders, data, stock.join()));
            } catch (UncheckedIOException | IllegalArgumentException e) {
                LOG.log(System.Logger.Level.WARNING, "The last good content cannot be shown any more", e);
            }
        }
        return new Opening.Closed(problems);
    }

    private static void keep(LastGoodContent lastGood, Content content, Folders folders) {
        try {
            lastGood.keep(content, folders.content(), folders.config(), folders.stock());
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "The content could not be kept for when a newer one is broken", e);
        }
    }

    /**
     * What is shown, whatever the stock.
     *
     * @param config   the configuration's folder
     * @param list     the stock list that is watched; empty where the content is not the newest
     * @param problems for staff
     */
    private record Shown(Content content, Path config, Optional<Path> list, List<String> problems) {}

    /** Throws as {@link PrintShop#of} does, and an IllegalArgumentException if the language is not offered. */
    private Premises stocked(Shown shown, Folders folders, Path data, StockRoom stock) {
        boolean pseudo = folders.language().equals(Optional.of(PseudoLocale.LANGUAGE));
        Content content = pseudo ? shown.content().withPseudoLocale() : shown.content();
        Settings settings = folders.language().map(content.settings()::startingIn).orElse(content.settings());
        Premises asRead = new Premises(
                content.showroom(),
                content.texts(),
                content.libraries(),
                settings,
                search(content),
                new KioskPrinter(PrintShop.of(content, shown.config(), clock), settings.paper(), data, clock),
                content.version(),
                shown.problems(),
                Optional::empty,
                stock::ended);
        // Another stock list, asked for by name, is shown as it is.
        return folders.stock().isPresent() ? asRead : withUnits(asRead, content, shown.list(), stock);
    }

    private static Premises withUnits(Premises asRead, Content content, Optional<Path> list, StockRoom stock) {
        StockRoom.Stocked now = stock.look(content, list);
        return asRead.with(now.showroom(), now.problems(), () -> stock.state(list).equals(now.state())
                ? Optional.empty()
                : Optional.of(withUnits(asRead, content, list, stock)));
    }

    /** The index is made while the first screen is up; the first search waits for it if it must. */
    private static Search search(Content content) {
        CompletableFuture<Finder> finder = CompletableFuture.supplyAsync(() -> Finders.of(content));
        return (language, words) -> finder
                .join()
                .find(Query.of(words, language).withKinds(Set.of(Kind.EXPLAINER, Kind.WORD)))
                .hits()
                .stream()
                .map(KioskWiring::hit)
                .toList();
    }

    private static Search.Hit hit(Hit hit) {
        Search.Kind kind = hit.kind() == Kind.EXPLAINER ? Search.Kind.TOPIC : Search.Kind.WORD;
        return new Search.Hit(kind, hit.id(), hit.title().words(), hit.excerpt().words());
    }
}
