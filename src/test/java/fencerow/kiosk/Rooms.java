package fencerow.kiosk;

import fencerow.checklist.Composer;
import fencerow.checklist.Weights;
import fencerow.desk.Settings;
import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.GlossaryWord;
import fencerow.explainers.Inline;
import fencerow.explainers.Library;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Search;
import fencerow.needs.Job;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.quiz.Quiz;
import fencerow.stock.Catalogue;
import fencerow.stock.PriceBook;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.Offering;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import fencerow.visit.Showroom;
import fencerow.wording.Texts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** A small invented showroom for tests of the kiosk, with the words of the shipped content. */
public final class Rooms {
    /** The PIN of its staff door. */
    public static final String PIN = "2468";

    private static final Path WORDS = Path.of("content", "en");
    private static final Texts ENGLISH = new Texts("en", words());

    private Rooms() {}

    /** The showroom, open in English and in the pseudo-locale. */
    public static Premises premises() {
        Library library = library("en");
        return new Premises(showroom(), Map.of("en", ENGLISH, PseudoLocale.TAG, PseudoLocale.of(ENGLISH)),
                Map.of("en", library, PseudoLocale.TAG, new Library(PseudoLocale.TAG, library.explainers(),
                        library.glossary())),
                settings(), search(library),
                (visit, comfort, parts) -> new ListPrinter.Printed.OnPaper(1), "test", List.of());
    }

    private static Settings settings() {
        return new Settings("Tumblegate Tractor Yard", List.of("en", PseudoLocale.TAG), false,
                new Settings.Idle(Duration.ofSeconds(75), Duration.ofSeconds(30)), new Settings.Panel(0.6096),
                new Settings.PaperSettings(Optional.empty(), "saved-lists", true, 12, 5), PIN, "data");
    }

    private static Search search(Library library) {
        return (language, words) -> library.explainers().stream()
                .filter(each -> each.title().toLowerCase(Locale.ROOT)
                        .contains(words.toLowerCase(Locale.ROOT)))
                .map(each -> new Search.Hit(
                        Search.Kind.TOPIC, each.topic().value(), each.title(), each.summary()))
                .toList();
    }

    private static Showroom showroom() {
        Catalogue catalogue = new Catalogue(
                List.of(feature("quick-attach", Stop.LOADER), feature("rear-remotes", Stop.HYDRAULICS),
                        feature("liquid-ballast", Stop.TIRES), feature("mid-pto", Stop.UNDERSIDE)),
                List.of(), List.of(), List.of(), new PriceBook(Map.of()));
        List<Question.Option> jobs = Stream.of("mow-lawn", "clear-snow")
                .map(id -> new Question.Option(new OptionId(id), 1, List.of(), List.of(), List.of()))
                .toList();
        Questionnaire questionnaire = new Questionnaire(
                List.of(new Question(new QuestionId("jobs"), Question.Choose.JOBS, Map.of(), jobs, Optional.empty(),
                        List.of())),
                List.of(new Job(new JobId("mow-lawn"), "lawn", List.of(), Map.of()),
                        new Job(new JobId("clear-snow"), "snow", List.of(), Map.of())));
        return new Showroom(catalogue, questionnaire, new Quiz(List.of()), new Composer(List.of(), 12, 5),
                Weights.USUAL, List.of());
    }

    private static Feature feature(String id, Stop stop) {
        Map<MachineClass, Offering> offering = new EnumMap<>(MachineClass.class);
        offering.put(MachineClass.SUBCOMPACT, Offering.EXTRA);
        offering.put(MachineClass.SMALL, Offering.COMMON);
        offering.put(MachineClass.MID, Offering.INCLUDED);
        offering.put(MachineClass.LARGE, Offering.FACTORY_ONLY);
        offering.put(MachineClass.UTILITY, Offering.NEVER);
        return new Feature(new FeatureId(id), stop, true, List.of(), 1, offering, List.of(), Map.of(), false);
    }

    private static Library library(String language) {
        TopicId attach = new TopicId("quick-attach");
        TopicId remotes = new TopicId("rear-remotes");
        List<Inline> words = List.of(
                new Inline.Text("A quick-attach coupler is a carrier between the loader arms and the tool. You drive "
                        + "up, hook the top edge, curl back and lock it. Read about "),
                new Inline.TopicLink("rear remotes", remotes),
                new Inline.Text(" too, or look up "),
                new Inline.WordLink("the PTO", "pto"),
                new Inline.Text(". It "),
                new Inline.Strong("always"),
                new Inline.Text(" matters."));
        List<Block> blocks = List.of(
                new Block.Heading("What it is"), new Block.Paragraph(words),
                new Block.Heading("Is it standard?"), new Block.OfferingTable(),
                new Block.Heading("Can it be added later?"), new Block.PriceNote(),
                new Block.Heading("How to check any tractor"),
                new Block.Points(true, List.of(words, List.of(new Inline.Text("Look behind the bucket.")))),
                new Block.Points(false, List.of(List.of(new Inline.Text("Two levers are a good sign.")))),
                new Block.Table(List.of("Class", "Weight"), List.of(List.of("Small frame", "900 kg"))));
        return new Library(language, List.of(
                new Explainer(attach, language, "Quick-attach coupler",
                        "A carrier on the loader that lets you swap the bucket for forks in a minute.", Stop.LOADER,
                        List.of(remotes), Optional.of(new QuestionId("quick-attach")), List.of("loader"), blocks),
                new Explainer(remotes, language, "Rear remotes",
                        "Pairs of oil couplers at the rear that drive a cylinder on a tool.", Stop.HYDRAULICS,
                        List.of(attach), Optional.empty(), List.of(), blocks)),
                List.of(new GlossaryWord("pto", "PTO", "A turning shaft that drives a tool.", List.of("power take-off"),
                        Optional.empty())));
    }

    private static Map<String, String> words() {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.list(WORDS)) {
            files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(file -> {
                try {
                    flatten("", new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file)), all);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    private static void flatten(String prefix, Object value, Map<String, String> all) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> flatten(prefix.isEmpty() ? key.toString() : prefix + "." + key, inner, all));
        } else if (value != null) {
            all.put(prefix, value.toString());
        }
    }
}
