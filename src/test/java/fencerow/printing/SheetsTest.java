package fencerow.printing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Answers;
import fencerow.quiz.Belief;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import fencerow.wording.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sheet in every variant: valid as PDF/UA-1 (ISO 14289-1), in the shopper's language, black on white. */
class SheetsTest {
    private static final int DPI = 60;
    private static final double POINTS_TO_MM = 25.4 / 72;

    private final List<String> warnings = new ArrayList<>();
    private final Paper paper = Paper.of(Shipped.PAPER, 14, 4, warnings::add);
    private final Phrases phrases = new Phrases(
            Shipped.ENGLISH, new Quantities(Shipped.ENGLISH.locale(), false)::show);

    @TempDir
    private Path folder;

    /** A shopper of whom it is known what they believe, with two tractors pinned. */
    private Handout handout() {
        return handout("en", phrases);
    }

    private static Handout handout(String language, Phrases phrases) {
        Visit visit = Visit.NEW;
        for (String topic : List.of("factory-cab", "rear-remotes", "liquid-ballast")) {
            visit = visit.believed(new QuestionId(topic), belief(topic));
        }
        var units = Shipped.CONTENT.showroom().units();
        visit = visit.togglePin(units.get(0).id()).togglePin(units.get(1).id());
        assertEquals(Answers.NONE, visit.answers());
        var imprint = new Handout.Imprint("Tumblegate Tractor Yard", true, RandomHandouts.DAY, "0123abcd");
        return new Handouts(Shipped.CONTENT.showroom(), phrases, Shipped.CONTENT.getLibrary(language), imprint)
                .of(visit);
    }

    /** A sure and wrong one. */
    private static Belief belief(String topic) {
        var question = Shipped.CONTENT.showroom().quiz().questions().stream()
                .filter(each -> each.id().value().equals(topic))
                .findFirst()
                .orElseThrow();
        OptionId wrong = question.options().stream()
                .filter(option -> !option.equals(question.key()))
                .findFirst()
                .orElseThrow();
        return new Belief(java.util.Optional.of(wrong), true);
    }

    /** Every language on every paper, every language and every paper in both sizes of type. */
    static Stream<Arguments> variants() {
        return Shipped.CONTENT.settings().languages().stream()
                .flatMap(language -> Arrays.stream(PageFormat.Size.values()).map(size -> Arguments.of(
                        language, new PageFormat(size, language.equals("en") == (size == PageFormat.Size.A4)))));
    }

    @ParameterizedTest
    @MethodSource("variants")
    void everySheetIsValidAndKeepsTheNorms(String language, PageFormat format) throws IOException {
        Texts texts = Shipped.CONTENT.getTexts(language);
        var words = new Phrases(texts, new Quantities(texts.locale(), format.size() == PageFormat.Size.A4)::show);
        Printout printout = paper.print(handout(language, words), words, format, List.of(Sheet.values()));
        assertEquals(List.of(), Pdf.faults(printout.pdf()));
        assertEquals(List.of(), warnings, "what the renderer finds fault with");
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            assertEquals(language, pdf.getDocumentCatalog().getLanguage());
            assertEquals(texts.get("paper.title"), pdf.getDocumentInformation().getTitle());
            assertEquals(printout.pages(), pdf.getNumberOfPages());
            Norms.assertHeld(pdf, texts, language + " " + format);
            Norms.assertBodyType(pdf, format.largePrint());
            Norms.assertFontsEmbedded(pdf);
            var box = pdf.getPage(0).getMediaBox();
            boolean letter = format.size() == PageFormat.Size.LETTER;
            assertEquals(letter ? 215.9 : 210, box.getWidth() * POINTS_TO_MM, 0.2);
            assertEquals(letter ? 279.4 : 297, box.getHeight() * POINTS_TO_MM, 0.2);
            Norms.assertBlackAndWhite(Pdf.picture(pdf, 1, DPI));
            Norms.assertBlackAndWhite(Pdf.picture(pdf, 2, DPI));
        }
    }

    @Test
    void everySheetOtherThanTheLongOnesIsOnePage() {
        for (Sheet sheet : Sheet.values()) {
            int pages = paper.print(handout(), phrases, PageFormat.LETTER, List.of(sheet)).pages();
            boolean isLong = sheet == Sheet.FURTHER_LINES || sheet == Sheet.EXPLANATIONS;
            assertTrue(isLong ? pages > 1 : pages == 1, sheet + " has " + pages + " pages");
        }
    }

    @Test
    void tickBoxesAreFiveMillimetresAndPlain() throws IOException {
        Printout printout = paper.print(handout(), phrases, PageFormat.LETTER, List.of(Sheet.LIST));
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            double size = Boxes.smallestSquare(Pdf.picture(pdf, 1, 300), 300);
            assertTrue(size >= 5, "tick boxes of " + size + " mm");
        }
    }

    @Test
    void theExplanationsTellEachThingThatWasWrong() throws IOException {
        Printout printout = paper.print(handout(), phrases, PageFormat.LETTER, List.of(Sheet.EXPLANATIONS));
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            var text = new StringBuilder();
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                text.append(Pdf.text(pdf, page));
            }
            String words = Pdf.flat(text.toString());
            for (String topic : List.of("factory-cab", "rear-remotes", "liquid-ballast")) {
                assertTrue(words.contains(Pdf.flat(Shipped.ENGLISH.get("feature." + topic + ".truth"))), topic);
            }
        }
    }

    @Test
    void aTemplateThatAsksForWordsThatAreNotThereIsNamed() throws IOException {
        copyTemplates();
        Path broken = folder.resolve("sit-test.html");
        Files.writeString(broken, Files.readString(broken) + "<p>{{paper.sit-test.nothing-like-it}}</p>");
        Paper own = Paper.of(folder, 14, 4, warnings::add);
        var e = assertThrows(IllegalArgumentException.class,
                () -> own.print(handout(), phrases, PageFormat.LETTER, List.of(Sheet.SIT_TEST)));
        assertTrue(e.getMessage().contains("paper.sit-test.nothing-like-it"), e.getMessage());
    }

    @Test
    void aTemplateThatAsksForAValueThatIsNotThereIsNamedWithItsLine() throws IOException {
        copyTemplates();
        Files.writeString(folder.resolve("list.html"), "<h1>{{paper.title}}</h1>\n<p>{{nothingLikeIt}}</p>");
        Paper own = Paper.of(folder, 14, 4, warnings::add);
        var e = assertThrows(IllegalArgumentException.class,
                () -> own.print(handout(), phrases, PageFormat.LETTER, List.of(Sheet.LIST)));
        assertTrue(e.getMessage().contains("list.html") && e.getMessage().contains("line 2"), e.getMessage());
    }

    @Test
    void aTemplateThatIsNotWellFormedIsToldWhere() throws IOException {
        copyTemplates();
        Files.writeString(folder.resolve("list.html"), "<h1>{{paper.title}}</h1>\n<p>no end");
        Paper own = Paper.of(folder, 14, 4, warnings::add);
        var e = assertThrows(IllegalArgumentException.class,
                () -> own.print(handout(), phrases, PageFormat.LETTER, List.of(Sheet.LIST)));
        assertTrue(e.getMessage().contains("well-formed"), e.getMessage());
    }

    @Test
    void aTemplateCannotFetchAnythingFromAnywhere() throws IOException {
        copyTemplates();
        Path secret = Files.writeString(folder.resolve("secret.css"), "h1:after { content: 'fetched' }");
        Path page = folder.resolve("page.html");
        Files.writeString(page, Files.readString(page).replace("</head>",
                "<link rel=\"stylesheet\" href=\"" + secret.toUri() + "\"/></head>"));
        Paper own = Paper.of(folder, 14, 4, warnings::add);
        Printout printout = own.print(handout(), phrases, PageFormat.LETTER, List.of(Sheet.LIST));
        try (PDDocument pdf = Pdf.open(printout.pdf())) {
            assertTrue(!Pdf.text(pdf, 1).contains("fetched"));
        }
    }

    @Test
    void aStyleTheRendererDoesNotKnowIsFoundFaultWith() throws IOException {
        copyTemplates();
        Path css = folder.resolve("paper.css");
        Files.writeString(css, Files.readString(css) + "\n.lines { no-such-thing: 3pt }");
        Paper.of(folder, 14, 4, warnings::add).print(handout(), phrases, PageFormat.LETTER, List.of(Sheet.LIST));
        assertTrue(!warnings.isEmpty(), "a property that does not exist went unnoticed");
    }

    private void copyTemplates() throws IOException {
        try (Stream<Path> files = Files.list(Shipped.PAPER)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
    }
}
