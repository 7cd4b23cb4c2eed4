package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.Folders;
import fencerow.kiosk.Fx;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Workshop;
import fencerow.needs.Answer;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.visit.SecondQuote;
import fencerow.visit.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/** The three people the kiosk is for, from touch to paper, on the shipped content and with a robot's finger. */
class ShopperFlowsFxTest {
    /** What the walk-in shopper says where a question is put this way; to all others they are not sure. */
    private static final Map<String, String> SAYS = Map.of(
            "How would you like to clear snow?", "A blower in front",
            "How long is the drive you clear?", "Long",
            "Do you want shelter from the weather?", "A closed cab would be nice",
            "How cold do your winters get?", "Well below 0 F",
            "New or used?", "Either is fine");
    private static final int QUESTIONS = 9;

    @TempDir
    private Path folder;

    private final Workshop workshop = new Workshop();
    private Optional<Stage> stage = Optional.empty();

    @BeforeEach
    void open() throws Exception {
        Stage primary = FxToolkit.registerPrimaryStage();
        stage = Optional.of(primary);
    }

    @AfterEach
    void close() {
        workshop.close();
        Fx.on(() -> {
            stage.ifPresent(Stage::hide);
            return true;
        });
    }

    private Shopper shopper() throws IOException {
        Premises premises = premises();
        Shown shown = Fx.on(() -> Shown.of(premises, 1080, 1920, workshop.backRoom()));
        return new Shopper(shown, stage.orElseThrow());
    }

    /** The demo showroom, with its lists saved into the test's folder. */
    private Premises premises() throws IOException {
        Path config = folder.resolve("kiosk-config");
        copy(Path.of("kiosk-config"), config);
        Path showroom = config.resolve("showroom.yaml");
        String text = Files.readString(showroom)
                .replace("save-folder: saved-lists", "save-folder: '" + lists() + "'");
        Files.writeString(showroom, text);
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
        Opening opening = new KioskWiring(clock, "", folder.resolve("data"))
                .open(new Folders(Path.of("content"), config, Optional.empty(), Optional.empty()));
        return ((Opening.Open) opening).premises();
    }

    private Path lists() {
        return folder.resolve("lists");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }

    @Test
    void aShopperWorksOutALiftAsksWhyReadsWhatItIsAndComesBackToTheCalculation() throws IOException {
        Shopper shopper = shopper();
        shopper.touch("Touch anywhere to start");
        shopper.touch("Work it out: loads, ballast, snow, money");
        shopper.touch("Loader");
        shopper.touch("How much can this loader lift out at the pallet?");
        shopper.touch("More: Rated lift at the bucket pins");
        shopper.waitForWords("2,050");
        shopper.touch("Why?");
        shopper.waitForWords("How it is worked out");
        shopper.touch("Close");
        shopper.touch("What is this?");
        shopper.touch("Front loader");
        shopper.touch("Work it out");
        shopper.touch("What does a full bucket weigh?");
        shopper.waitForWords("How full");
    }

    @Test
    void aShopperWalksUpIsMatchedAndLeavesWithASavedList() throws IOException {
        Shopper shopper = shopper();
        shopper.touch("Touch anywhere to start");
        shopper.touch("Find a tractor that fits");
        shopper.touch("Clear snow");
        shopper.touch("Keep up a gravel drive");
        shopper.touch("Next");
        for (int i = 0; i < QUESTIONS; i++) {
            String answer = SAYS.getOrDefault(shopper.words("question").orElseThrow(), "Not sure");
            shopper.touch(answer);
        }
        shopper.touch("See what fits");
        shopper.waitForWords("tractors here can do all you asked for");
        shopper.touch("Look at it");
        shopper.waitForWords("What it costs");
        shopper.waitForWords("Ready to work");
        shopper.touch("My list");
        shopper.waitForWords("clear snow");
        shopper.touch("Get my list");
        shopper.touch("Save it");
        shopper.waitForWords("Ask at the desk for");

        List<Path> saved = pdfs();
        assertEquals(1, saved.size(), () -> "saved: " + saved);
        String paper = text(saved.get(0));
        assertTrue(paper.contains("Check it before you pay"), paper);
        assertTrue(paper.contains("clear snow"), "the work stands on the paper: " + paper);

        shopper.touch("Done, forget my answers");
        Visit after = Fx.on(() -> shopper.shown().frame().visit().get());
        assertEquals(Visit.NEW, after, "nothing of the visit is left");
        assertTrue(Fx.on(() -> shopper.shown().frame().here()) instanceof Place.Attract);
    }

    private List<Path> pdfs() throws IOException {
        try (Stream<Path> files = Files.walk(lists())) {
            return files.filter(file -> file.toString().endsWith(".pdf")).toList();
        }
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aSalespersonTriesWhatIfLooksSomethingUpAndHandsTheScreenBackAsItWas() throws IOException {
        Shopper shopper = shopper();
        Visit before = snow();
        Fx.on(() -> {
            shopper.shown().frame().change(fresh -> before);
            shopper.shown().frame().go(Place.Results.TOP);
            return true;
        });
        shopper.touch("Talk it over");
        shopper.waitForWords("What if you did without");
        shopper.touch("Front snow blower");
        shopper.waitForWords("Tractors that can do it:");
        assertFalse(visit(shopper).setAside().isEmpty(), "the must-have is set aside");

        shopper.touch("Look something up");
        "quick".codePoints().mapToObj(Character::toString).forEach(shopper::touch);
        shopper.touch("Quick-attach coupler. A quick-attach coupler is a carrier");
        shopper.waitForWords("Why you would care");
        shopper.touch("Back");
        shopper.touch("Back");
        shopper.waitForWords("Tractors that can do it:");

        shopper.touch("Back as it was");
        shopper.waitForWords("tractors here can do all you asked for");
        assertEquals(before, visit(shopper));
    }

    @Test
    void aShopperWithAnotherSellersQuoteSeesItBesideTheBestOneHere() throws IOException {
        Shopper shopper = shopper();
        Fx.on(() -> {
            shopper.shown().frame().change(fresh -> snow());
            shopper.shown().frame().go(Place.Results.TOP);
            return true;
        });
        shopper.touch("Another seller's price");
        shopper.touch("Small-frame compact");
        shopper.touch("Used");
        shopper.touch("About 500");
        shopper.touch("Next");
        List.of("1", "4", "9", "0", "0").forEach(shopper::touch);
        shopper.waitForWords("$14,900");
        shopper.touch("Next");
        shopper.touch("There");
        shopper.touch("See them side by side");
        shopper.waitForWords("As you told us");
        shopper.waitForWords("The one you told us about");

        SecondQuote told = SecondQuote.of(visit(shopper).secondQuote().orElseThrow(),
                shopper.shown().frame().premises().showroom().catalogue());
        assertEquals(500, told.hours().orElseThrow());
        assertEquals(1_490_000, told.price().outTheDoor().cents());
        assertEquals(1, told.seen().size(), "what was not told stays unknown: " + told.seen());
    }

    private static Visit visit(Shopper shopper) {
        return Fx.on(() -> shopper.shown().frame().visit().get());
    }

    private static Visit snow() {
        return choose(choose(Visit.NEW, "jobs", "clear-snow", "keep-drive"), "snow-tool", "front-blower");
    }

    private static Visit choose(Visit visit, String question, String... options) {
        return visit.answered(new QuestionId(question),
                new Answer.Chosen(Arrays.stream(options).map(OptionId::new).toList()));
    }
}
