package fencerow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.security.SecureRandom;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The check character of ISO/IEC 7064's hybrid systems, and the codes that have one. */
class CheckCharacterTest {
    private static final CheckCharacter ALPHANUMERIC = new CheckCharacter("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ");
    private static final CheckCharacter NUMERIC = new CheckCharacter("0123456789");

    /** MOD 37,36: IFPI, GRid Standard, the identifier A1-2425G-ABC1234002-M; ISAN 0000-0000-C36D-002B-K-0000-0000-E. */
    @Test
    void publishedIdentifiersHaveTheirCheckCharacters() {
        assertEquals('M', ALPHANUMERIC.of("A12425GABC1234002"));
        assertEquals('K', ALPHANUMERIC.of("00000000C36D002B"));
        assertEquals('E', ALPHANUMERIC.of("00000000C36D002B00000000"));
        assertTrue(ALPHANUMERIC.holds("A12425GABC1234002M"));
        assertFalse(ALPHANUMERIC.holds("A12425GABC1234002N"));
    }

    /** MOD 11,10: the examples 79462 and 00200667308 of the python-stdnum library's documentation. */
    @Test
    void publishedNumbersHaveTheirCheckDigits() {
        assertEquals('3', NUMERIC.of("79462"));
        assertEquals('5', NUMERIC.of("00200667308"));
    }

    @Test
    void everyWrongCharacterAndNearlyEveryPairTheWrongWayRoundIsNoticed() {
        ComeBackCode code = ComeBackCode.draw(new SecureRandom());
        String right = code.symbols();
        for (int i = 0; i < right.length(); i++) {
            for (char each : ComeBackCode.ALPHABET.toCharArray()) {
                String typed = right.substring(0, i) + each + right.substring(i + 1);
                assertEquals(each == right.charAt(i), ComeBackCode.findTyped(typed).isPresent(),
                        typed + " of " + right);
            }
        }
        int pairs = 0;
        int missed = 0;
        CheckCharacter check = new CheckCharacter(ComeBackCode.ALPHABET);
        for (char first : ComeBackCode.ALPHABET.toCharArray()) {
            for (char second : ComeBackCode.ALPHABET.toCharArray()) {
                String rest = "K7QM3F9TX";
                if (first != second) {
                    pairs++;
                    missed += check.of(rest + first + second) == check.of(rest + second + first) ? 1 : 0;
                }
            }
        }
        assertTrue(missed * 50 < pairs, missed + " of " + pairs + " missed");
    }

    @Test
    void aCodeIsReadHoweverItWasGroupedAndWithLettersThatLookLikeDigits() {
        CheckCharacter check = new CheckCharacter(ComeBackCode.ALPHABET);
        String symbols = "0101AAAA000" + check.of("0101AAAA000");
        var code = new ComeBackCode(symbols);
        assertEquals("0101-AAAA-000" + symbols.charAt(11), code.written());
        assertEquals(Optional.of(code), ComeBackCode.findTyped("o1OI aaaa-ooo" + symbols.charAt(11)));
        assertEquals(Optional.of(code), ComeBackCode.findTyped("ol0i-aaaa-000" + symbols.charAt(11)));
        assertEquals(Optional.empty(), ComeBackCode.findTyped(symbols.substring(1)));
        assertEquals(Optional.empty(), ComeBackCode.findTyped(""));
        assertThrows(IllegalArgumentException.class, () -> new ComeBackCode("0101AAAA0001"));
        assertFalse(code.toString().contains("0101"), "a log must not hold it");
        assertEquals("K7QM-3", ComeBackCode.grouped("K7QM3"));
        assertEquals("K7QM", ComeBackCode.grouped("K7QM"));
    }
}
