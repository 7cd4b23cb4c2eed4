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
import fencerow.desk.Settings;
import fencerow.kiosk.Kiosk;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Search;
import fencerow.search.Finder;
import fencerow.search.Kind;
import fencerow.wording.PseudoLocale;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;

/**
 * Wires the kiosk: content that can be shown, search and paper over it.
 *
 * @param clock      tells when nobody is here any more, and dates lists
 * @param window     {@code WxH} for an ordinary window; blank for full screen
 * @param dataFolder where the last good content is kept
 */
record KioskWiring(Clock clock, String window, Path dataFolder) implements KioskLauncher {
    /** What the kiosk has screens for. */
    private static final Set<Kind> SHOWN = EnumSet.complementOf(EnumSet.of(Kind.CALCULATION));
    private static final System.Logger LOG = System.getLogger(KioskWiring.class.getName());

    @Override
    public int launch(Folders folders) throws NoScreenException {
        try {
            LogFiles.open(dataFolder.resolve("log"), clock.getZone());
            return switch (Kiosk.run(new KioskFiles(this, folders), SpeechEngine.installed(),
                    new SteadyClock(System::nanoTime), window)) {
                case CLOSED -> FencerowCommand.FINE;
                case AGAIN -> FencerowCommand.AGAIN;
                case HANGING -> FencerowCommand.HANGING;
            };
        } catch (UnsupportedOperationException e) {
            throw new NoScreenException("there is no screen to show the kiosk on (" + e.getMessage()
                    + "); start it where a desktop runs");
        }
    }

    /** What can be shown; where the content is broken, what was last good is shown and staff see what is wrong. */
    Opening open(Folders folders) {
        Opening opening = read(folders);
        return opening instanceof Opening.Closed closed ? fallBack(closed, folders) : opening;
    }

    /** Reads the content and keeps it for when a later one is broken; says what is wrong where it cannot be shown. */
    Opening read(Folders folders) {
        Reading<Content> reading = new ContentReader().read(folders.content(), folders.config(), folders.stock());
        if (reading instanceof Reading.Bad<Content> bad) {
            return new Opening.Closed(bad.problems().stream().map(Problem::toString).toList());
        }
        Content content = ((Reading.Good<Content>) reading).content();
        try {
            Premises premises = premises(content, folders.config(), List.of(), folders);
            keep(lastGood(), content, folders);
            return new Opening.Open(premises);
        } catch (UncheckedIOException | IllegalArgumentException e) {
            return new Opening.Closed(List.of(String.valueOf(e.getMessage())));
        }
    }

    private LastGoodContent lastGood() {
        return new LastGoodContent(dataFolder.resolve("last-good"));
    }

    private Opening fallBack(Opening.Closed wrong, Folders folders) {
        Optional<LastGoodContent.Kept> kept = lastGood().find();
        if (kept.isPresent()) {
            try {
                return new Opening.Open(
                        premises(kept.get().content(), kept.get().config(), wrong.problems(), folders));
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
        return new Premises(
                content.showroom(),
                content.texts(),
                content.libraries(),
                settings,
                search(content),
                new KioskPrinter(shop, settings.paper(), dataFolder, clock),
                content.version(),
                problems);
    }

    /** The index is made while the first screen is up; the first search waits for it if it must. */
    private static Search search(Content content) {
        CompletableFuture<Finder> finder = CompletableFuture.supplyAsync(() -> Finders.of(content));
        return query -> finder.join().find(query.withKinds(query.kinds().isEmpty() ? SHOWN : query.kinds()));
    }
}
