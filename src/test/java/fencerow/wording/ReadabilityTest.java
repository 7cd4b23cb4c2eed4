package fencerow.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadabilityTest {
    private static final Prose ENGLISH = new Prose(Locale.US, Set.of());
    private static final Prose SPANISH = new Prose(Locale.forLanguageTag("es-US"), Set.of());

    /** The formulas as the package quanteda.textstats for R has them (R/textstat_readability.R), by hand. */
    @ParameterizedTest(name = "{0} words, {1} sentences, {2} syllables")
    @CsvSource({"100, 5, 150, 59.635, 9.910", "100, 8, 130, 84.168, 4.625", "100, 10, 125, 90.935, 3.060",
        "7, 1, 8, 103.044, 0.626", "5, 1, 7, 83.320, 2.880"})
    void englishFormulasGivePublishedValues(int words, int sentences, int syllables, double ease, double grade) {
        var text = new Readability(sentences, words, words, syllables);
        assertEquals(ease, text.fleschEase(), 0.001);
        assertEquals(grade, text.fleschKincaidGrade(), 0.001);
    }

    /** textstat's own tests, for Szigriszt's constant of 206.835. */
    @Test
    void theSpanishFormulaGivesAPublishedValue() {
        assertEquals(114.615, new Readability(1, 5, 5, 7).szigriszt(), 0.001);
    }

    /** The sentence that the tests of quanteda.textstats expect a Flesch value of 103 for, within 1 %. */
    @Test
    void aPublishedSentenceIsCountedAndGraded() {
        Readability text = ENGLISH.measure(List.of("The cat in the hat ate breakfast.")).orElseThrow();
        assertEquals(new Readability(1, 7, 7, 8), text);
        assertEquals(103, text.fleschEase(), 1.03);
        assertEquals(new Readability(1, 5, 5, 7),
                ENGLISH.measure(List.of("Cool dogs wear da sunglasses.")).orElseThrow());
    }

    /** Against the CMU Pronouncing Dictionary 0.7a, for the words of our texts. */
    @Test
    void syllablesOfEnglishWordsAreThoseOfAPronouncingDictionary() throws IOException {
        int wrong = 0;
        int ofText = 0;
        int difference = 0;
        int syllables = 0;
        List<String> misses = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("src/test/resources/reading/english-syllables.csv"))) {
            if (!line.startsWith("#")) {
                String[] cells = line.split(",", -1);
                int spoken = Integer.parseInt(cells[1]);
                int times = Integer.parseInt(cells[2]);
                int counted = EnglishSyllables.count(cells[0]);
                ofText += times;
                syllables += times * spoken;
                difference += times * (counted - spoken);
                wrong += counted == spoken ? 0 : times;
                if (counted != spoken) {
                    misses.add(cells[0]);
                }
            }
        }
        assertTrue(ofText > 10_000, "only " + ofText);
        assertTrue(100.0 * wrong / ofText < 1, wrong + " of " + ofText + " words: " + misses);
        assertTrue(Math.abs(100.0 * difference / syllables) < 0.5, difference + " of " + syllables + " syllables");
    }

    /** By the spelling rules of the Real Academia: diphthong, triphthong, hiatus, silent u, h between vowels. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"toma, 2", "fuerza, 2", "aceite, 3", "ciudad, 2", "buey, 1", "muy, 1", "hoy, 1", "y, 1", "quien, 1",
        "enganche, 3", "llanta, 2", "ruedas, 2", "motor, 2", "leer, 2", "peor, 2", "agua, 2", "gui\u00f3n, 1",
        "d\u00eda, 2", "pa\u00eds, 2", "gu\u00eda, 2", "ma\u00edz, 2", "ra\u00edz, 2", "ba\u00fal, 2",
        "a\u00e9reo, 4", "proh\u00edbe, 3", "ahora, 3", "transe\u00fante, 4", "ping\u00fcino, 3",
        "cig\u00fce\u00f1al, 3",
        "hidr\u00e1ulica, 4", "neum\u00e1ticos, 4", "averigu\u00e1is, 4", "tracci\u00f3n, 2", "veh\u00edculo, 4",
        "chiita, 3", "tractor, 2", "cuchar\u00f3n, 3"})
    void syllablesOfSpanishWordsFollowTheirSpelling(String word, int syllables) {
        assertEquals(syllables, SpanishSyllables.count(word));
    }

    @Test
    void sentencesWordsAndFiguresAreCountedAsReadersDo() {
        Readability text = ENGLISH.measure(List.of(
                "Is it 3,500 lb? No. Look at the three-point hitch!", "One point without an end")).orElseThrow();
        assertEquals(4, text.sentences());
        assertEquals(16, text.words());
        assertEquals(14, text.weighed(), "figures have no syllables to weigh");
        assertEquals(2, SPANISH.measure(List.of("\u00bfTiene toma de fuerza? S\u00ed.")).orElseThrow().sentences());
        assertEquals(7, ENGLISH.longestSentence(List.of("One. Two words. Seven words are in this one here.")));
    }

    @Test
    void tradeWordsCountAsWordsAndNotAsHardOnes() {
        List<String> text = List.of("The PTO drives the hydrostatic attachments.");
        Readability plain = ENGLISH.measure(text).orElseThrow();
        Set<String> allowed = Set.of("PTO", "hydrostatic", "attachment");
        Readability eased = new Prose(Locale.US, allowed).measure(text).orElseThrow();
        assertEquals(plain.words(), eased.words());
        assertEquals(3, eased.weighed());
        assertTrue(eased.fleschKincaidGrade() < plain.fleschKincaidGrade());
        assertEquals(3 + 4 + 3, plain.syllables() - eased.syllables(), "initials are spoken letter by letter");
    }

    @Test
    void countsOfNoTextAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Readability(0, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Readability(1, 2, 3, 4));
        assertTrue(ENGLISH.measure(List.of("", "48 x 60")).map(Readability::weighed).orElse(0) <= 1);
    }
}
