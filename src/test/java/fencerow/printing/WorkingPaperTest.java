package fencerow.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Tally;
import fencerow.desk.VisitBook;
import fencerow.match.Match;
import fencerow.needs.Answer;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The papers of staff: one valid page each (PDF/UA-1, ISO 14289-1), what weighs most first. */
class WorkingPaperTest {
    private static final Showroom SHOWROOM = Shipped.CONTENT.showroom();
    private static final String USED = "u-406";

    private final List<String> warnings = new ArrayList<>();
    private final Paper paper = Paper.of(Shipped.PAPER, 14, 4, warnings::add);

    private static Phrases phrases(String language) {
        var texts = Shipped.CONTENT.getTexts(language);
        return new Phrases(texts, new Quantities(texts.locale(), false)::show);
    }

    private static Tally settled(String feature, long visits) {
        return Tally.of(Map.of(new Counter(Kind.UNIT_UNCHECKED, USED, feature), visits));
    }

    private static Visit pinned() {
        return Visit.NEW
                .answered(new QuestionId("jobs"), new Answer.Chosen(
                        List.of(new OptionId("clear-snow"), new OptionId("move-pallets"))))
                .togglePin(new UnitId("n-209"))
                .togglePin(new UnitId(USED))
                .togglePin(new UnitId("u-419"));
    }

    private byte[] print(WorkingPaper work, String language, PageFormat.Size size) {
        var imprint = new Handout.Imprint("Tumblegate Tractor Yard", true, RandomHandouts.DAY, "0123abcd");
        Printout printout = paper.print(work, imprint, Shipped.CONTENT.getLibrary(language), phrases(language),
                new PageFormat(size, false));
        assertEquals(1, printout.pages());
        assertEquals(List.of(), Pdf.faults(printout.pdf()));
        assertEquals(List.of(), warnings);
        return printout.pdf();
    }

    private static String words(byte[] pdf) throws IOException {
        try (PDDocument document = Pdf.open(pdf)) {
            Norms.assertFontsEmbedded(document);
            Norms.assertBodyType(document, false);
            Norms.assertBlackAndWhite(Pdf.picture(document, 1, 60));
            return Pdf.flat(Pdf.text(document, 1));
        }
    }

    @ParameterizedTest
    @EnumSource(PageFormat.Size.class)
    void theLotWalkIsOnePageAndSaysWhatIsLeftOut(PageFormat.Size size) throws IOException {
        String words = words(print(WorkingPaper.lotWalk(SHOWROOM, Tally.NONE, phrases("en")), "en", size));
        assertTrue(words.contains(Pdf.flat("Walk the lot")), words);
        assertTrue(words.matches(".*and\\s*\\d+\\s*more.*"), words);
    }

    @Test
    void whatMostVisitsHungOnComesFirstAndWhatFewHungOnIsNotTold() {
        Tally counts = settled("block-heater", 9)
                .plus(settled("bolt-on-edge", VisitBook.FEWEST - 1))
                .plus(new Counter(Kind.UNIT_UNCHECKED, "u-419", "block-heater"), 4);
        List<Map<String, Object>> rows =
                WorkingPaper.lotWalk(SHOWROOM, counts, phrases("en")).lists().getOrDefault("rows", List.of());
        assertEquals(List.of(USED, "9"), List.of(rows.get(0).get("id"), rows.get(0).get("settled")));
        assertEquals(1, rows.stream().filter(row -> USED.equals(row.get("id"))).filter(row ->
                !"".equals(row.get("settled"))).count(), "fewer than three visits are not shown");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void theUnitsSheetIsOnePageWithPlansAndWhatToVerify(String language) throws IOException {
        Phrases phrases = phrases(language);
        WorkingPaper work = WorkingPaper.unitsSheet(SHOWROOM, pinned(), phrases);
        String words = words(print(work, language, PageFormat.Size.LETTER));
        for (String id : List.of("n-209", USED, "u-419")) {
            Match match = SHOWROOM.ranking(pinned()).matches().stream()
                    .filter(each -> each.unit().id().value().equals(id))
                    .findFirst()
                    .orElseThrow();
            assertTrue(words.contains(id), id);
            assertTrue(words.contains(Pdf.flat(phrases.range(match.price().total()))), () -> id + " in " + words);
        }
        assertFalse(work.lists().isEmpty());
    }

    @Test
    void aVisitThatPinnedNothingHasAPageThatSaysSo() throws IOException {
        WorkingPaper work = WorkingPaper.unitsSheet(SHOWROOM, Visit.NEW, phrases("en"));
        assertTrue(words(print(work, "en", PageFormat.Size.A4)).contains(Pdf.flat("No unit is pinned.")));
    }
}
