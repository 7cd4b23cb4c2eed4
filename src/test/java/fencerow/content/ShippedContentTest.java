package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Pictures;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.Feature;
import fencerow.terms.MachineClass;
import fencerow.terms.TopicId;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The content and the demo showroom as they are shipped. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShippedContentTest {
    private static final Path SHOPPERS = Path.of("src", "test", "resources", "shoppers");

    private Reading<Content> reading = new Reading.Bad<>(List.of(), List.of());

    @BeforeAll
    void read() {
        reading = new ContentReader().review(Path.of("content"), Path.of("kiosk-config"), Optional.empty());
    }

    @Test
    void itReadsWithoutAProblemOrAWarning() {
        assertEquals(List.of(), TinyContent.problems(reading));
        assertEquals(List.of(), reading.warnings());
    }

    @Test
    void everyFeatureIsComplete() {
        Content content = TinyContent.good(reading);
        Texts texts = content.getTexts("en");
        List<String> missing = new ArrayList<>();
        List<Feature> features = content.showroom().catalogue().features();
        for (Feature feature : features) {
            String id = feature.id().value();
            if (content.getLibrary("en").find(new TopicId(id)).isEmpty()) {
                missing.add(id + " has no article");
            }
            for (MachineClass each : MachineClass.values()) {
                if (!feature.offering().containsKey(each)) {
                    missing.add(id + " has no offering on " + each.id());
                }
            }
            for (String part : List.of("name", "short", "check", "good", "bad", "belief", "truth")) {
                if (texts.find("feature." + id + "." + part).filter(words -> !words.isBlank()).isEmpty()) {
                    missing.add(id + " has no words " + part);
                }
            }
            if (content.showroom().quiz().questions().stream()
                    .filter(question -> question.kind() == QuizQuestion.Kind.BELIEF)
                    .noneMatch(question -> question.feature().equals(Optional.of(feature.id())))) {
                missing.add(id + " has no belief question");
            }
            if (content.showroom().composer().templates().stream().noneMatch(line ->
                    line.feature().equals(Optional.of(feature.id())))) {
                missing.add(id + " has no checklist line");
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(features.size() > 50, () -> "only " + features.size() + " features were looked at");
    }

    @Test
    void theInventedShoppersAnswersAndBeliefsAreUnderstood() {
        var showroom = TinyContent.good(reading).showroom();
        for (String shopper : List.of("lawn-and-garden", "long-drive", "small-farm")) {
            var answers = new AnswersReader(showroom.questionnaire()).read(SHOPPERS.resolve(shopper + ".yaml"));
            assertEquals(List.of(), answers.warnings());
            assertTrue(TinyContent.good(answers).byQuestion().size() > 4, shopper);
            var beliefs = new BeliefsReader(showroom.quiz()).read(SHOPPERS.resolve(shopper + "-beliefs.yaml"));
            assertTrue(TinyContent.good(beliefs).byQuestion().size() > 4, shopper);
        }
    }

    @Test
    void everyPictureStandsSomewhereAndIsToldInWordsInEveryLanguage() {
        Content content = TinyContent.good(reading);
        List<String> wrong = new ArrayList<>();
        Pictures pictures = content.getLibrary("en").pictures();
        for (String name : pictures.byName().keySet()) {
            TopicId topic = new TopicId(name.replaceFirst(Pictures.WITHOUT + "$", ""));
            boolean tractor = Stream.of(Pictures.Side.values()).anyMatch(side -> side.pictureName().equals(name));
            boolean job = name.startsWith(Pictures.JOB);
            if (!tractor && !job && content.getLibrary("en").find(topic).isEmpty()) {
                wrong.add(name + " stands beside no explainer");
            }
            for (String language : content.settings().languages()) {
                String words = content.getTexts(language).find("picture." + name + ".alt").orElse("");
                if (words.split(" ", -1).length < 4) {
                    wrong.add(name + " has no words in " + language);
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(pictures.byName().size() > 60, () -> "only " + pictures.byName().size());
        assertTrue(pictures.byName().keySet().stream().filter(name -> !name.endsWith(Pictures.WITHOUT)).count() >= 43,
                "40 features and three sides of a tractor");
    }

    @Test
    void thePseudoLocaleHasEveryWordAndArticle() {
        Content content = TinyContent.good(reading).withPseudoLocale();
        assertEquals(content.getTexts("en").keys(), content.getTexts("qps").keys());
        assertEquals(content.getLibrary("en").explainers().size(), content.getLibrary("qps").explainers().size());
        assertEquals(List.of("en", "es", "qps"), content.settings().languages());
    }
}
