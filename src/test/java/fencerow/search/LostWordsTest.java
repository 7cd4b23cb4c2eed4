package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LostWordsTest {
    private final LostWords words = LostWords.load();

    @ParameterizedTest
    @CsvSource({"cup holder, cup holder", "Bluetooth radio, radio", "cell phone charger, cell phone charger"})
    void ordinaryWordsAreKept(String typed, String kept) {
        assertEquals(List.of(kept.split(" ", -1)), words.of(typed));
    }

    /** All people, streets and numbers here are invented. */
    @ParameterizedTest
    @ValueSource(strings = {
        "Zebulon Quackenthorpe", "zebulon quackenthorpe", "john smith", "bill", "555 0142", "(555) 555-0142",
        "zq@example.com", "my name is rocket", "I'm rocket man", "mr radio", "12 oak street", "4410 county road 12",
        "old mill avenue", "p.o. box 17 holder", "me llamo papel", "calle del cielo 4", "20000", "a1b2c3"
    })
    void namesNumbersAndAddressesAreNot(String typed) {
        assertEquals(List.of(), words.of(typed));
    }

    @Test
    void whatIsLeftBesideThemIs() {
        assertEquals(List.of("cup", "holder"), words.of("Quackenthorpe cup holder 555-0142 zq@example.com"));
        assertEquals(List.of("radio"), words.of("radio 12 oak street springfield"));
    }

    @Test
    void aLongTextIsCut() {
        assertEquals(6, words.of("cup holder ".repeat(100)).size());
        assertEquals(List.of(), words.of(""));
    }
}
