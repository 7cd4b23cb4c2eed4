package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.ChecklistDocument;
import fencerow.backoffice.document.ChecklistDocument.BecauseEntry;
import fencerow.backoffice.document.ChecklistDocument.LineEntry;
import fencerow.content.AnswersReader;
import fencerow.content.Content;
import fencerow.content.Reading;
import fencerow.needs.Answers;
import fencerow.needs.Questionnaire;
import fencerow.needs.Requirement;
import fencerow.terms.QuestionId;
import fencerow.terms.Stop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class ChecklistCommandTest {
    static final List<String> SHOPPERS = Run.SHOPPER_NAMES;

    private static final List<String> STOPS = Stream.of(Stop.values()).map(Stop::id).toList();

    @TempDir
    static Path folder;

    private static final Map<String, Run> RUNS = new HashMap<>();

    @BeforeAll
    static void print() {
        SHOPPERS.forEach(shopper -> RUNS.put(shopper, run(shopper, "--json", "--out", pdf(shopper).toString())));
    }

    private static Path pdf(String shopper) {
        return folder.resolve(shopper + ".pdf");
    }

    private static List<LineEntry> lines(String shopper) {
        return RUNS.get(shopper).document(ChecklistDocument.class).lines();
    }

    private static Run run(String shopper, String... more) {
        List<String> arguments = Stream.concat(
                        Stream.of("checklist", "--answers", Run.answers(shopper), "--beliefs", Run.beliefs(shopper)),
                        Stream.of(more))
                .toList();
        return Run.of(arguments.toArray(String[]::new)).fine();
    }

    private static String words(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static int pages(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return document.getNumberOfPages();
        }
    }

    @ParameterizedTest
    @FieldSource("SHOPPERS")
    void linesAreOfTheContentInWalkAroundOrderEachWithItsReason(String shopper) throws IOException {
        List<LineEntry> lines = lines(shopper);
        Content content = Run.shipped();
        Set<String> needs = needs(content, shopper);

        Set<String> templates = new HashSet<>();
        content.showroom().composer().templates().forEach(template -> templates.add(template.id()));
        for (LineEntry line : lines) {
            assertTrue(templates.contains(line.id()), line.id());
            assertFalse(line.how().isBlank() || line.good().isBlank() || line.bad().isBlank(), line.id());
            assertTrue(line.atStakeLow().compareTo(line.atStakeHigh()) <= 0, line.id());
            assertFalse(line.because().isEmpty(), line.id());
            for (BecauseEntry because : line.because()) {
                assertTrue(because.need().map(needs::contains).orElse(true), because.toString());
                assertTrue(because.question()
                        .map(question -> content.showroom().quiz().find(new QuestionId(question)).isPresent())
                        .orElse(true), because.toString());
                assertEquals(because.kind().equals("your-work"), because.need().isPresent(), because.toString());
            }
        }
        assertInOrder(lines.stream().filter(line -> line.page() == 1 && !line.walkAway()).toList());
        assertInOrder(lines.stream().filter(line -> line.page() == 1 && line.walkAway()).toList());
        assertInOrder(lines.stream().filter(line -> line.page() == 3).toList());
        assertEquals(Set.of(1, 3), new HashSet<>(lines.stream().map(LineEntry::page).toList()));
        String words = words(pdf(shopper));
        lines.stream().filter(line -> line.page() == 1 && !line.walkAway()).forEach(line ->
                assertTrue(words.contains(line.what() + ". " + line.how()), line.what()));
    }

    private static Set<String> needs(Content content, String shopper) {
        Questionnaire questionnaire = content.showroom().questionnaire();
        var answers = (Reading.Good<Answers>)
                new AnswersReader(questionnaire).read(Path.of(Run.answers(shopper)));
        return questionnaire.needs(answers.content()).requirements().stream()
                .map(Requirement::id)
                .collect(Collectors.toSet());
    }

    private static void assertInOrder(List<LineEntry> lines) {
        List<Integer> stops = lines.stream().map(line -> STOPS.indexOf(line.stop())).toList();
        assertFalse(stops.isEmpty());
        assertEquals(stops.stream().sorted().toList(), stops);
    }

    @Test
    void wrongBeliefsAreOnTheList() {
        List<LineEntry> lines = lines("long-drive");

        List<BecauseEntry> wrong = lines.stream()
                .flatMap(line -> line.because().stream())
                .filter(because -> because.kind().equals("wrong-belief"))
                .toList();
        assertTrue(wrong.stream().anyMatch(because -> because.question().orElse("").equals("mid-pto")
                && because.reason().contains("That is not so.")), wrong.toString());
        assertTrue(lines.stream().flatMap(line -> line.because().stream()).anyMatch(because ->
                because.kind().equals("unsure") && because.question().orElse("").equals("rear-remotes")));
    }

    @Test
    void theSameComesOutEveryTime() {
        assertEquals(RUNS.get("small-farm").out(), run("small-farm", "--json").out());
    }

    @Test
    void twoPagesArePrintedAndMoreWhenAskedFor() throws IOException {
        Path all = folder.resolve("all.pdf");

        String text = run(
                        "long-drive", "--out", all.toString(), "--sheets", "list,comparison,further-lines,explanations")
                .out();

        assertTrue(text.contains("Saved " + all + ": " + pages(all) + " pages"), text);
        assertEquals(2, pages(pdf("long-drive")));
        assertTrue(pages(all) > 2);
    }

    @Test
    void thePseudoLocaleReachesThePaper() throws IOException {
        Path pdf = folder.resolve("pseudo.pdf");

        String out = run("long-drive", "--language", "qps", "--json", "--out", pdf.toString()).out();

        assertTrue(out.contains("\"language\" : \"qps\""), out.substring(0, 60));
        assertEquals("%PDF-", new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.US_ASCII));
    }

    @Test
    void aSpanishListIsSpanishToItsLastLine() throws IOException {
        Path pdf = folder.resolve("es.pdf");

        String out = run("long-drive", "--language", "es", "--out", pdf.toString(), "--sheets",
                "list,comparison,further-lines,explanations").out();

        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertEquals("es", document.getDocumentCatalog().getLanguage());
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("noviembre") || text.contains("de 20"), "no Spanish date");
            for (String english : List.of(" the ", " your ", " check ", "US$", "{", "kiosk.")) {
                assertFalse(text.contains(english), "[" + english + "] stands on Spanish paper");
            }
            assertTrue(text.contains("$"), "no prices");
        }
        assertFalse(out.contains(" the "), out);
    }

    @Test
    void whatCannotBeDoneIsSaid() {
        Run nowhere = Run.of("checklist", "--answers", Run.answers("long-drive")).failed(FencerowCommand.WRONG_USE);
        assertTrue(nowhere.err().contains("--out"), nowhere.err());
        Run sheet = Run.of("checklist", "--answers", Run.answers("long-drive"), "--json", "--sheets", "lists")
                .failed(FencerowCommand.WRONG_USE);
        assertTrue(sheet.err().contains("there is no sheet [lists]; use one of list,"), sheet.err());
        String out = folder.resolve("no/such/folder.pdf").toString();
        Run unwritable = Run.of("checklist", "--answers", Run.answers("long-drive"), "--out", out)
                .failed(FencerowCommand.NOT_FINE);
        assertTrue(unwritable.err().contains(out + " cannot be written"), unwritable.err());
    }

    @Test
    void brokenBeliefsAreNamedWithFileAndLine() throws IOException {
        Path file = Files.writeString(folder.resolve("beliefs.yaml"), "beliefs:\n  mid-pto: maybe\n");

        Run run = Run.of("checklist", "--json", "--answers", Run.answers("long-drive"), "--beliefs", file.toString())
                .failed(FencerowCommand.NOT_FINE);

        assertTrue(run.err().contains(file + ":2: "), run.err());
    }
}
