package fencerow.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.checklist.ChecklistLine;
import fencerow.checklist.ChecklistLine.Place;
import fencerow.checklist.Composer;
import fencerow.terms.Payment;
import fencerow.terms.PriceRange;
import fencerow.terms.Stop;
import fencerow.wording.PseudoLocale;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is chosen for the pages, and that it is all there, in order, and never more than they hold. */
class PaperTest {
    private static final Texts ENGLISH = Shipped.ENGLISH;
    private static final List<Sheet> TWO_PAGES = List.of(Sheet.LIST, Sheet.COMPARISON);
    private static final int RANDOM_VISITS = Integer.getInteger("fencerow.visits", 40);

    private final List<String> warnings = new ArrayList<>();
    private final Paper paper = paper(14, 4);

    private Paper paper(int lines, int signs) {
        return Paper.of(Shipped.PAPER, lines, signs, warnings::add);
    }

    private static List<ChecklistLine> at(Place place, List<ChecklistLine> lines) {
        return lines.stream().filter(line -> line.place() == place).toList();
    }

    @Test
    void randomVisitsInRandomFormatsNeverOverfillTheirPages() {
        for (long seed = 1; seed <= RANDOM_VISITS; seed++) {
            Random random = new Random(seed);
            Texts texts = random.nextInt(4) == 0 ? PseudoLocale.of(ENGLISH) : ENGLISH;
            var handouts = new RandomHandouts(seed, texts);
            var size = random.nextBoolean() ? PageFormat.Size.LETTER : PageFormat.Size.A4;
            Handout handout = handouts.next();
            Printout printout = paper.print(handout, handouts.phrases(), new PageFormat(size, false), TWO_PAGES);
            String which = "seed " + seed + " on " + size + " in " + texts.language();
            assertEquals(2, printout.pages(), which);
            assertTrue(at(Place.PAGE_ONE, printout.lines()).size() >= 5 || texts != ENGLISH, which);
            try (PDDocument pdf = Pdf.open(printout.pdf())) {
                Norms.assertHeld(pdf, texts, which);
            } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
        assertEquals(List.of(), warnings, "what the renderer finds fault with");
    }

    @Test
    void noLineLeftOutRanksAboveOneKept() {
        for (long seed = 1; seed <= 10; seed++) {
            var handouts = new RandomHandouts(seed, ENGLISH);
            List<ChecklistLine> lines = paper.place(handouts.next(), handouts.phrases(), PageFormat.LETTER);
            double least = at(Place.PAGE_ONE, lines).stream()
                    .filter(line -> !line.atStake().job())
                    .mapToDouble(ChecklistLine::expected)
                    .min()
                    .orElse(Double.MAX_VALUE);
            List<ChecklistLine> further = at(Place.FURTHER_SHEET, lines).stream()
                    .filter(line -> !line.template().walkAway())
                    .toList();
            assertTrue(further.stream().allMatch(line -> line.expected() <= least || line.atStake().job()),
                    "seed " + seed + ": a line of the further sheet is worth more than one of page one");
            boolean moneyKept = least < Double.MAX_VALUE;
            assertFalse(moneyKept && further.stream().anyMatch(line -> line.atStake().job()),
                    "seed " + seed + ": a job at stake was left out for money");
        }
    }

    @Test
    void oneLineMoreThanChosenWouldBeASecondPage() {
        for (long seed = 1; seed <= 4; seed++) {
            var handouts = new RandomHandouts(seed, ENGLISH);
            Handout handout = handouts.next();
            int kept = at(Place.PAGE_ONE, paper(40, 4).place(handout, handouts.phrases(), PageFormat.LETTER)).size();
            assertTrue(kept < 40, "a page cannot hold 40 lines");
            var fuller = new SheetValues.Setting(
                    Composer.placed(handout.lines(), kept + 1, 4),
                    paper.fit(handout, handouts.phrases(), PageFormat.LETTER).styles());
            try (Typesetter.Pages pages =
                    paper.set(handout, handouts.phrases(), PageFormat.LETTER, fuller, List.of(Sheet.LIST))) {
                assertTrue(pages.count() > 1, "seed " + seed + ": page one would hold " + (kept + 1) + " lines");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(PageFormat.Size.class)
    void everyShippedLineTakesTwoPrintedLinesAndLosesNoWord(PageFormat.Size size) {
        var handouts = new RandomHandouts(1, ENGLISH);
        Handout all = handouts.withEveryLine();
        var setting = paper(500, 0).fit(all, handouts.phrases(), new PageFormat(size, false));
        List<String> brief = setting.styles().entrySet().stream()
                .filter(entry -> entry.getValue() == SheetValues.Style.BRIEF)
                .map(entry -> entry.getKey())
                .sorted()
                .toList();
        assertEquals(List.of(), brief, "lines too long for two printed lines; shorten their words");
    }

    @Test
    void aLineTooLongForTwoPrintedLinesLosesOnlyWhatGoodLooksLike() {
        Texts longer = PseudoLocale.of(ENGLISH);
        var handouts = new RandomHandouts(3, longer);
        Handout handout = handouts.next();
        var setting = paper.fit(handout, handouts.phrases(), PageFormat.LETTER);
        Printout printout = paper.print(handout, handouts.phrases(), PageFormat.LETTER, List.of(Sheet.LIST));
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            String text = Pdf.flat(Pdf.text(pdf, 1));
            for (ChecklistLine line : at(Place.PAGE_ONE, printout.lines())) {
                boolean brief = setting.styles().get(line.id()) == SheetValues.Style.BRIEF;
                assertTrue(text.contains(Pdf.flat(handouts.phrases().labels().lineHow(line))), line.id());
                assertEquals(!brief, text.contains(Pdf.flat(handouts.phrases().labels().lineGood(line))), line.id());
            }
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void pageOneReadsInWalkAroundOrderWithEveryWordAndEveryPrice() throws Exception {
        var handouts = new RandomHandouts(5, ENGLISH);
        Handout handout = handouts.next();
        Printout printout = paper.print(handout, handouts.phrases(), PageFormat.LETTER, TWO_PAGES);
        List<ChecklistLine> kept = at(Place.PAGE_ONE, printout.lines());
        assertEquals(kept.stream().sorted(Comparator.comparing(line -> line.template().stop())).toList(), kept);
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            String text = Pdf.flat(Pdf.text(pdf, 1));
            int before = 0;
            for (ChecklistLine line : kept) {
                String words = handouts.phrases().labels().lineWhat(line) + ". "
                        + handouts.phrases().labels().lineHow(line) + " Good: "
                        + handouts.phrases().labels().lineGood(line) + " "
                        + (line.atStake().job() ? "the job itself" : handouts.phrases().range(line.atStake().money()));
                int at = text.indexOf(Pdf.flat(words), before);
                assertTrue(at >= before, "not in its place: " + words + "\nin\n" + text);
                before = at;
            }
            for (Handout.MustHave mustHave : handout.mustHaves()) {
                assertTrue(text.contains(Pdf.flat(mustHave.words())), mustHave.words());
            }
        }
    }

    @Test
    void everyStopWithALineHasItsHeadingAndNoOther() throws Exception {
        var handouts = new RandomHandouts(6, ENGLISH);
        Printout printout = paper.print(handouts.next(), handouts.phrases(), PageFormat.LETTER, List.of(Sheet.LIST));
        List<Stop> stops = at(Place.PAGE_ONE, printout.lines()).stream()
                .map(line -> line.template().stop())
                .distinct()
                .toList();
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            List<String> printed = Pdf.text(pdf, 1).lines().map(String::strip).toList();
            for (Stop stop : Stop.values()) {
                assertEquals(stops.contains(stop) ? 1 : 0,
                        printed.stream().filter(ENGLISH.get("paper.stop." + stop.id())::equals).count(), stop.id());
            }
        }
    }

    @Test
    void largePrintHasTheSameLinesOnMorePages() {
        var handouts = new RandomHandouts(2, ENGLISH);
        Handout handout = handouts.next();
        List<Sheet> list = List.of(Sheet.LIST);
        Printout ordinary = paper.print(handout, handouts.phrases(), PageFormat.LETTER, list);
        Printout large =
                paper.print(handout, handouts.phrases(), new PageFormat(PageFormat.Size.LETTER, true), list);
        assertEquals(ordinary.lines(), large.lines());
        assertEquals(1, ordinary.pages());
        assertTrue(large.pages() > 1);
    }

    @Test
    void theComparisonHasAtMostEighteenRowsAndStaysOnePage() throws Exception {
        var handouts = new RandomHandouts(8, ENGLISH);
        for (int i = 0; i < 6; i++) {
            Handout handout = handouts.next();
            Printout printout =
                    paper.print(handout, handouts.phrases(), PageFormat.LETTER, List.of(Sheet.COMPARISON));
            assertEquals(1, printout.pages());
            try (PDDocument pdf = Pdf.open(printout.pdf())) {
                int notes = 1;
                assertTrue(Pdf.rowsOf(pdf) - 1 + notes <= 18, "rows below the heads, and notes");
            }
        }
    }

    @Test
    void aFilledColumnAddsUp() {
        var handouts = new RandomHandouts(9, ENGLISH);
        int filled = 0;
        for (int i = 0; i < 20; i++) {
            for (Handout.Tractor tractor : handouts.next().tractors()) {
                filled++;
                assertEquals(tractor.outTheDoor(), tractor.asking().plus(tractor.extras()));
                tractor.ready().ifPresent(ready -> assertEquals(ready, Payment.of(
                                PriceRange.exactly(tractor.outTheDoor()).plus(tractor.toSpend().orElseThrow()))
                        .less(tractor.trade())));
            }
        }
        assertTrue(filled > 5);
    }

    @Test
    void theSameHandoutGivesTheSamePlaces() {
        var handouts = new RandomHandouts(4, ENGLISH);
        Handout handout = handouts.next();
        assertEquals(paper.place(handout, handouts.phrases(), PageFormat.LETTER),
                paper.print(handout, handouts.phrases(), PageFormat.LETTER, TWO_PAGES).lines());
    }

    @Test
    void wordsThatLookLikeMarkupArePrintedAsTheyAre() throws Exception {
        var handouts = new RandomHandouts(4, ENGLISH);
        Handout plain = handouts.next();
        String odd = "Nuts & <b>bolts</b> \"{{x}}\"";
        var imprint = new Handout.Imprint(odd, false, RandomHandouts.DAY, odd);
        Handout handout = new Handout(imprint, odd, plain.mustHaves(), plain.lines(), plain.cautions(),
                plain.tractors(), plain.library(), plain.comeBack());
        Printout printout = paper.print(handout, handouts.phrases(), PageFormat.LETTER, TWO_PAGES);
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            assertTrue(Pdf.flat(Pdf.text(pdf, 1)).contains(odd));
        }
    }

    @Test
    void theCodeHoldsTheMustHavesAsPlainText() {
        var handouts = new RandomHandouts(10, ENGLISH);
        for (int i = 0; i < 10; i++) {
            Handout handout = handouts.next();
            String text = QrCode.text(handout, ENGLISH);
            if (handout.mustHaves().isEmpty()) {
                assertEquals("", text);
            } else {
                assertTrue(text.getBytes(java.nio.charset.StandardCharsets.UTF_8).length <= 600);
                assertEquals(text, Pdf.decode(QrCode.encode(text)));
                assertTrue(text.contains(handout.mustHaves().get(0).words()));
            }
        }
    }

    @Test
    void sheetsWithNothingOnThemAreLeftOut() {
        var handouts = new RandomHandouts(4, ENGLISH);
        Handout plain = handouts.next();
        Handout empty = new Handout(plain.imprint(), "", List.of(), List.of(), List.of(), List.of(),
                plain.library(), plain.comeBack());
        Printout printout = paper.print(empty, handouts.phrases(), PageFormat.LETTER,
                List.of(Sheet.LIST, Sheet.COMPARISON, Sheet.FURTHER_LINES, Sheet.EXPLANATIONS));
        assertEquals(2, printout.pages());
    }

    @Test
    void nothingIsLeftInTheTemporaryFolder() throws Exception {
        Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
        var handouts = new RandomHandouts(4, ENGLISH);
        Handout handout = handouts.next();
        String[] before = temporary.toFile().list();
        paper.print(handout, handouts.phrases(), PageFormat.LETTER, TWO_PAGES);
        List<String> more = ofRenderers(temporary);
        more.removeAll(Arrays.asList(before));
        // Other tests print at the same time; what theirs leave goes when they are done.
        for (int look = 0; look < 100 && !more.isEmpty(); look++) {
            Thread.sleep(100);
            more.retainAll(ofRenderers(temporary));
        }
        assertEquals(List.of(), more);
    }

    private static List<String> ofRenderers(Path folder) {
        List<String> names = new ArrayList<>(Arrays.asList(folder.toFile().list()));
        names.removeIf(name -> !name.contains("PDF") && !name.contains("imageio") && !name.contains("pdf"));
        return names;
    }
}
