package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReaderTest {
    private final Reader reader = new Reader(List.of("en", "es"));

    @ParameterizedTest
    @ValueSource(strings = {
        "60 in", "60 inch", "60-inch", "60in", "60\"", "60 \u201d", "60 inches", "5 ft", "5-foot", "5ft", "5'",
        "5 feet", "60 pulgadas", "5 pies"
    })
    void aLengthIsOneWordHoweverItIsWritten(String written) {
        assertEquals(List.of("60in", "deck"), words(written + " deck"));
    }

    @ParameterizedTest
    @CsvSource({
        "25 hp, 25hp", "25 horsepower, 25hp", "25hp, 25hp", "50-hour, 50hr", "5.5 ft, 66in", "'2,000 lbs', 2000lb",
        "540 rpm, 540rpm", "5 acres, 5ac", "0 ft, 0in"
    })
    void aNumberTakesItsUnit(String written, String read) {
        assertEquals(List.of(read), words(written));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4wd", "3pt", "r4", "540e", "540", "4x4", "10k"})
    void otherWordsWithNumbersStayAsTheyAre(String written) {
        assertEquals(List.of(written), words(written));
    }

    @Test
    void caseAccentsAndApostrophesDoNotCount() {
        assertEquals(words("nino dealers cabina"), words("Ni\u00f1o dealer's CABINA"));
        assertEquals(reader.read("Tercera Funci\u00f3n").stems("es"), reader.read("tercera funcion").stems("es"));
    }

    @Test
    void wordsThatSayNothingAreLeftOutUnlessThereAreNoOthers() {
        assertEquals(List.of("juic", "tire"), reader.read("the juice in the tires").stems("en"));
        assertEquals(List.of("agu", "llant"), reader.read("agua en las llantas").stems("es"));
        assertEquals(2, reader.read("in the").telling("en").size());
    }

    @Test
    void theLastWordIsUnfinishedUntilABlankFollows() {
        assertTrue(reader.read("rear rem").typing());
        assertFalse(reader.read("rear remotes ").typing());
        assertFalse(reader.read("").typing());
    }

    private List<String> words(String text) {
        return reader.read(text).words().stream().map(Reading.Word::folded).toList();
    }
}
