package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.Folders;
import fencerow.kiosk.Fx;
import fencerow.kiosk.HandClock;
import fencerow.kiosk.LiveKiosk;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.BackRoom;
import fencerow.kiosk.frame.Ending;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.needs.Answer;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.visit.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What breaks around a kiosk, and what the shopper sees of it; each line printed is one row of a table. */
class ChaosFxTest {
    private static final int PATIENCE_SECONDS = 120;
    private static final String PRICE = "grille-guard-kit,,120,500";
    private static final String BROKEN = "grille-guard-kit,,900,500";

    @TempDir
    private Path folder;

    private final HandClock clock = new HandClock();

    private LiveKiosk open(DemoShowroom demo) {
        return LiveKiosk.of(new KioskFiles(new KioskWiring(clock, "", config -> demo.data()), demo.folders()));
    }

    static void row(String tried, String seen) {
        System.out.println("chaos | " + tried + " | " + seen);
    }

    static Visit startVisit(LiveKiosk kiosk) {
        return Fx.on(() -> {
            kiosk.frame().go(new Place.Home());
            kiosk.frame().change(visit -> visit.answered(
                    new QuestionId("jobs"), new Answer.Chosen(List.of(new OptionId("clear-snow")))));
            return kiosk.frame().visit().get();
        });
    }

    @Test
    void aPrinterThatVanishedIsSaidInWordsAndTheVisitGoesOn() {
        DemoShowroom demo = DemoShowroom.in(folder);
        demo.change("showroom.yaml", "printer: \"\"", "printer: \"ipp://127.0.0.1:9/ipp/print\"");
        try (LiveKiosk kiosk = open(demo)) {
            Visit visit = startVisit(kiosk);
            Shopper shopper = new Shopper(kiosk.shown(), kiosk.window().stage());
            Fx.on(() -> {
                kiosk.frame().go(new Place.Print());
                return true;
            });
            shopper.waitForWords("The printer does not answer.");
            assertEquals(visit, Fx.on(() -> kiosk.frame().visit().get()));
            row("printer vanished", "\"The printer does not answer.\", a way to save, the visit goes on");
        }
    }

    @Test
    void contentThatBreaksGoesAwayAndComesBackIsNeverSeen() throws IOException {
        DemoShowroom demo = DemoShowroom.in(folder);
        Path content = copyOfContent();
        Folders folders = new Folders(content, demo.folders().config(), Optional.empty(), Optional.empty());
        try (LiveKiosk kiosk = LiveKiosk.of(
                new KioskFiles(new KioskWiring(clock, "", config -> demo.data()), folders))) {
            Visit visit = startVisit(kiosk);
            String version = Fx.on(() -> kiosk.frame().premises().contentVersion());

            kiosk.waitForOffer(() -> demo.change("prices.csv", PRICE, BROKEN));
            assertEquals(visit, Fx.on(() -> kiosk.frame().visit().get()));
            Premises broken = nextVisit(kiosk);
            assertEquals(version, broken.contentVersion());
            assertTrue(broken.problems().get(0).startsWith("kiosk-config/prices.csv:2: "),
                    broken.problems().toString());
            row("content broken", "nothing; staff read " + broken.problems().get(0));

            Path config = folder.resolve("kiosk-config");
            Path away = folder.resolve("away");
            kiosk.waitForOffer(() -> move(config, away));
            Premises gone = nextVisit(kiosk);
            assertEquals(version, gone.contentVersion());
            assertFalse(gone.problems().isEmpty());
            row("configuration folder gone", "nothing; staff read " + gone.problems().get(0));

            kiosk.waitForOffer(() -> move(content, folder.resolve("content-away")));
            Premises empty = nextVisit(kiosk);
            assertEquals(version, empty.contentVersion());
            assertTrue(empty.problems().get(0).startsWith("content:1: there is no such folder"),
                    empty.problems().toString());
            row("content folder gone as well", "nothing; staff read " + empty.problems().get(0));

            kiosk.waitForOffer(() -> {
                move(folder.resolve("content-away"), content);
                move(away, config);
                demo.change("prices.csv", BROKEN, PRICE);
            });
            assertEquals(List.of(), nextVisit(kiosk).problems());
            row("content mended", "the mended content, from the next visit on");
        }
    }

    private Path copyOfContent() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("content"))) {
            for (Path each : all.toList()) {
                Files.copy(each, folder.resolve(each.toString()));
            }
        }
        return folder.resolve("content");
    }

    static Premises nextVisit(LiveKiosk kiosk) {
        return Fx.on(() -> {
            kiosk.frame().startOver(new Place.Home());
            return kiosk.frame().premises();
        });
    }

    private static void move(Path from, Path to) {
        try {
            Files.move(from, to);
        } catch (IOException e) {
            throw new AssertionError(from + " cannot be moved", e);
        }
    }

    @Test
    void aClockPutForwardOrBackNeitherEndsAVisitNorKeepsOne() {
        try (LiveKiosk kiosk = open(DemoShowroom.in(folder))) {
            Visit visit = startVisit(kiosk);
            for (Duration jump : List.of(Duration.ofDays(1), Duration.ofDays(-400))) {
                clock.pass(jump);
                Fx.on(() -> {
                    kiosk.frame().tick();
                    return true;
                });
                assertEquals(visit, Fx.on(() -> kiosk.frame().visit().get()));
            }
            kiosk.clock().pass(Duration.ofMinutes(10));
            Fx.on(() -> {
                kiosk.frame().tick();
                return true;
            });
            assertEquals(Visit.NEW, Fx.on(() -> kiosk.frame().visit().get()));
            row("clock put a day on, then 400 days back",
                    "nothing; the visit ends when nobody has touched for a while");
        }
    }

    @Test
    void aKioskThatIsKilledAtAnyMomentStartsAgainWithWhatWasGood() throws Exception {
        DemoShowroom demo = DemoShowroom.in(folder);
        for (int milliseconds : List.of(700, 2500)) {
            Process early = start(demo);
            assertFalse(early.waitFor(milliseconds, TimeUnit.MILLISECONDS), "it ended by itself");
            kill(early);
        }
        Process kiosk = start(demo);
        for (int waited = 0; !isKept(demo); waited++) {
            assertTrue(waited < PATIENCE_SECONDS * 10 && kiosk.isAlive(), "no content was kept");
            TimeUnit.MILLISECONDS.sleep(100);
        }
        kill(kiosk);
        demo.change("prices.csv", PRICE, BROKEN);

        Opening opening = new KioskWiring(clock, "", config -> demo.data()).open(demo.folders());
        Premises shown = assertInstanceOf(Opening.Open.class, opening).premises();
        assertEquals(1, shown.problems().size());
        row("killed three times while starting, then content broken", "the last good content, a few seconds later");
    }

    private static boolean isKept(DemoShowroom demo) throws IOException {
        Path kept = demo.data().resolve("last-good");
        if (!Files.isDirectory(kept)) {
            return false;
        }
        try (Stream<Path> all = Files.list(kept)) {
            return all.anyMatch(each -> each.getFileName().toString().startsWith("good-"));
        }
    }

    private static void kill(Process process) throws InterruptedException {
        process.destroyForcibly();
        assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS));
    }

    private Process start(DemoShowroom demo) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(java, "-cp", System.getProperty("java.class.path"), "-Dprism.order=sw",
                "-Dglass.platform=Monocle", "-Dmonocle.platform=Headless", "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8", "-Dfencerow.data=" + demo.data(), "fencerow.Main",
                "--content", Path.of("content").toAbsolutePath().toString(),
                "--config", demo.folders().config().toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("kiosk.log").toFile())
                .start();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aVoiceThatDiesInASentenceSaysItAgainAndOneThatAlwaysDiesIsSaidToBeMissing() throws IOException {
        Path said = folder.resolve("said");
        Path engine = folder.resolve("engine");
        // As the system's killer of processes would end it, in its second sentence or in each.
        Files.writeString(engine, "#!/bin/sh\ncat >> '" + said + "'; echo >> '" + said + "'\n"
                + "[ \"$(wc -l < '" + said + "')\" != 2 ] || kill -9 $$\n");
        Files.setPosixFilePermissions(engine, PosixFilePermissions.fromString("rwx------"));
        Path dying = folder.resolve("dying");
        Files.writeString(dying, "#!/bin/sh\ncat > /dev/null; kill -9 $$\n");
        Files.setPosixFilePermissions(dying, PosixFilePermissions.fromString("rwx------"));

        readAloud(engine, shown -> {
            shown.touch("Help");
            shown.touch("Read aloud");
            shown.says("Go on");
        });
        List<String> lines = Files.readAllLines(said);
        assertEquals(lines.get(1), lines.get(2), "the sentence it died in is said again");
        assertTrue(lines.size() > 4 && !lines.get(3).equals(lines.get(2)), "then the next: " + lines);
        row("voice killed in a sentence", "the sentence is said again, then the next");

        readAloud(dying, shown -> {
            Visit visit = shown.frame().visit().get();
            shown.touch("Help");
            shown.touch("Read aloud");
            shown.says(shown.frame().say("aloud.missing"));
            shown.touch("Close");
            assertEquals(visit, shown.frame().visit().get());
            row("voice killed in every sentence", "\"" + shown.frame().say("aloud.missing") + "\"; the visit goes on");
        });
    }

    private static void readAloud(Path engine, Consumer<Shown> then) {
        Fx.on(() -> {
            Shown shown = Shown.of(
                    Rooms.premises(), 1920, 1080, BackRoom.inPlace(), new SpeechEngine(Optional.of(engine)));
            shown.frame().go(new Place.Home());
            shown.touch("Help");
            shown.touch("Read aloud");
            shown.touch("Read to me");
            then.accept(shown);
            shown.frame().leave();
            return true;
        });
    }

    @Test
    void fiveErrorsInARowAreNotHiddenFromWhoeverStartsTheKioskAgain() {
        try (LiveKiosk kiosk = open(DemoShowroom.in(folder))) {
            for (int i = 0; i < 5; i++) {
                startVisit(kiosk);
                Fx.on(() -> {
                    kiosk.frame().failed(new IllegalStateException("thrown by a test"));
                    return true;
                });
            }
            assertEquals(Optional.of(Ending.AGAIN), kiosk.window().ending());
            row("five errors within ten minutes", "the first screen after each, then a fresh start of the kiosk");
        }
    }
}
