package fencerow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is kept under a code is found by the code alone, and only as long as it lasts. */
class ComeBackBookTest {
    private static final int FEW_ROUNDS = 10;
    private static final String TEXT = "answer jobs clear-snow keep-drive";

    /** Rows and words in memory. */
    private static final class Shelf implements ComeBacks, Memory {
        private final Map<String, Row> rows = new HashMap<>();
        private final Map<String, String> words = new HashMap<>();
        /** What others do after the next look at the words. */
        private Runnable meanwhile = () -> {};

        @Override
        public void keep(Row row) {
            rows.put(row.handle(), row);
        }

        @Override
        public int forgetBefore(LocalDate day) {
            int before = rows.size();
            rows.values().removeIf(row -> row.lastDay().isBefore(day));
            return before - rows.size();
        }

        @Override
        public Optional<String> find(String name) {
            Optional<String> found = Optional.ofNullable(words.get(name));
            Runnable others = meanwhile;
            meanwhile = () -> {};
            others.run();
            return found;
        }

        @Override
        public Optional<Row> findRow(String handle) {
            return Optional.ofNullable(rows.get(handle));
        }

        @Override
        public void remember(String name, String text) {
            words.put(name, text);
        }

        @Override
        public String settle(String name, String text) {
            return words.merge(name, text, (first, second) -> first);
        }

        @Override
        public Map<String, String> columns() {
            return Map.of();
        }

        @Override
        public void rememberColumns(Map<String, String> columns) {
            throw new AssertionError("nobody asked for columns");
        }
    }

    private final Shelf shelf = new Shelf();

    @Test
    void twoKiosksThatKeepTheirFirstVisitAtTheSameMomentBothFindIt() {
        List<ComeBackCode> others = new ArrayList<>();
        shelf.meanwhile = () -> others.add(on("2026-05-04").keep("another visit", 3).code());

        ComeBackCode own = on("2026-05-04").keep(TEXT, 3).code();

        assertEquals(Optional.of(TEXT), on("2026-05-04").find(own));
        assertEquals(Optional.of("another visit"), on("2026-05-04").find(others.get(0)));
    }

    private ComeBackBook on(String day) {
        Clock clock = Clock.fixed(Instant.parse(day + "T12:00:00Z"), ZoneOffset.UTC);
        return new ComeBackBook(shelf, shelf, clock, new SecureRandom(), FEW_ROUNDS);
    }

    /** RFC 5869, appendix A.1: the first block of the output key material. */
    @Test
    void keysAreExpandedAsPublished() {
        HexFormat hex = HexFormat.of();
        assertEquals("3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf",
                hex.formatHex(CodeKeys.expand(
                        hex.parseHex("077709362c2e32df0ddc3f0dc47bba6390b6c73bb50f9c3122ec844ad7c2b3e5"),
                        hex.parseHex("f0f1f2f3f4f5f6f7f8f9"))));
    }

    @Test
    void aTextIsFoundByItsCodeUntilItsLastDay() {
        ComeBackBook.Kept kept = on("2026-03-02").keep(TEXT, 60);
        assertEquals(LocalDate.parse("2026-05-01"), kept.lastDay());
        assertEquals(Optional.of(TEXT), on("2026-03-02").find(kept.code()));
        assertEquals(Optional.of(TEXT), on("2026-05-01").find(kept.code()));
        assertEquals(Optional.empty(), on("2026-05-02").find(kept.code()));
        on("2026-05-01").forgetOld();
        assertEquals(1, shelf.rows.size());
        on("2026-05-02").forgetOld();
        assertEquals(0, shelf.rows.size());
    }

    @Test
    void whatIsTooOldGoesWhenSomethingNewIsKept() {
        on("2026-03-02").keep(TEXT, 60);
        on("2026-05-02").keep(TEXT, 60);
        assertEquals(1, shelf.rows.size());
    }

    @Test
    void anotherCodeFindsNothing() {
        ComeBackBook book = on("2026-03-02");
        ComeBackBook.Kept kept = book.keep(TEXT, 60);
        ComeBackBook.Kept other = book.keep("another", 60);
        assertNotEquals(kept.code(), other.code());
        assertEquals(Optional.empty(), book.find(ComeBackCode.draw(new SecureRandom())));
        assertEquals(Optional.of("another"), book.find(other.code()));
    }

    @Test
    void noRowGivesAwayCodeTextOrLengthAndEqualTextsLieDifferently() {
        ComeBackBook book = on("2026-03-02");
        ComeBackBook.Kept kept = book.keep(TEXT, 60);
        book.keep(TEXT, 60);
        book.keep("x", 60);
        book.keep("", 60);
        assertEquals(4, shelf.rows.values().stream().map(ComeBacks.Row::sealed).distinct().count());
        assertEquals(1, shelf.rows.values().stream().map(row -> row.sealed().length()).distinct().count());
        String all = shelf.rows.values() + " " + shelf.words;
        for (String secret : new String[] {TEXT, "clear-snow", kept.code().symbols(), kept.code().written(),
                Base64.getEncoder().encodeToString("clear-snow".getBytes(StandardCharsets.UTF_8))}) {
            assertFalse(all.contains(secret), secret);
        }
    }

    @Test
    void aRowThatWasChangedMovedOrGivenMoreDaysOpensNoMore() {
        ComeBackBook book = on("2026-03-02");
        ComeBackBook.Kept kept = book.keep(TEXT, 60);
        ComeBacks.Row row = shelf.rows.values().iterator().next();
        byte[] sealed = Base64.getDecoder().decode(row.sealed());
        sealed[20] ^= 1;
        shelf.keep(new ComeBacks.Row(row.handle(), row.lastDay(), Base64.getEncoder().encodeToString(sealed)));
        assertEquals(Optional.empty(), book.find(kept.code()));
        shelf.keep(new ComeBacks.Row(row.handle(), row.lastDay().plusDays(1), row.sealed()));
        assertEquals(Optional.empty(), book.find(kept.code()));
        shelf.keep(new ComeBacks.Row(row.handle(), row.lastDay(), "AAAA"));
        assertEquals(Optional.empty(), book.find(kept.code()));
        shelf.keep(row);
        assertEquals(Optional.of(TEXT), book.find(kept.code()));
    }

    @Test
    void anotherDatabaseHasAnotherSaltSoThatACodeIsWorthNothingThere() {
        ComeBackBook.Kept kept = on("2026-03-02").keep(TEXT, 60);
        shelf.words.clear();
        assertEquals(Optional.empty(), on("2026-03-02").find(kept.code()));
    }

    @Test
    void longTextsComeBackWhole() {
        String text = "pin n-203\n".repeat(400);
        ComeBackBook.Kept kept = on("2026-03-02").keep(text, 1);
        assertEquals(Optional.of(text), on("2026-03-03").find(kept.code()));
        assertTrue(text.length() > 2 * 512);
    }
}
