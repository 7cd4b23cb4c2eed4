package fencerow.desk;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Keeps what shoppers asked to find again, sealed so that only the code on their paper opens it: neither this program
 * nor whoever has its database can, see {@link ComeBackCode}. Making and finding take a good part of a second. May be
 * used from any thread.
 */
public final class ComeBackBook {
    /** Rounds of PBKDF2 with HMAC-SHA-256 a try costs; the least OWASP's Password Storage Cheat Sheet asks for. */
    static final int ROUNDS = 600_000;

    private static final String SALT = "come-back-salt";
    private static final int SALT_BYTES = 16;

    private final ComeBacks rows;
    private final Memory memory;
    private final Clock clock;
    private final SecureRandom random;
    private final int rounds;

    /**
     * Opens the book.
     *
     * @param memory keeps the salt, which is this database's own
     * @param clock  says which day it is
     * @param random codes, salt and nonces come of
     */
    public ComeBackBook(ComeBacks rows, Memory memory, Clock clock, SecureRandom random) {
        this(rows, memory, clock, random, ROUNDS);
    }

    ComeBackBook(ComeBacks rows, Memory memory, Clock clock, SecureRandom random, int rounds) {
        this.rows = rows;
        this.memory = memory;
        this.clock = clock;
        this.random = random;
        this.rounds = rounds;
    }

    /**
     * What is given for a text.
     *
     * @param code    opens it
     * @param lastDay the last day it does
     */
    public record Kept(ComeBackCode code, LocalDate lastDay) {}

    /**
     * Keeps a text under a new code.
     *
     * @param days how long
     * @throws NotKeptException if the database cannot keep it
     */
    public Kept keep(String text, int days) {
        forgetOld();
        ComeBackCode code = ComeBackCode.draw(random);
        LocalDate lastDay = LocalDate.now(clock).plusDays(days);
        CodeKeys keys = CodeKeys.of(code, salt(), rounds);
        byte[] sealed = keys.seal(text, bound(keys.handle(), lastDay), random);
        rows.keep(new ComeBacks.Row(keys.handle(), lastDay, Base64.getEncoder().encodeToString(sealed)));
        return new Kept(code, lastDay);
    }

    /**
     * The text kept under the code; empty if there is none, or its days are over.
     *
     * @throws NotKeptException if the database cannot be read
     */
    public Optional<String> find(ComeBackCode code) {
        CodeKeys keys = CodeKeys.of(code, salt(), rounds);
        LocalDate today = LocalDate.now(clock);
        return rows.findRow(keys.handle())
                .filter(row -> !row.lastDay().isBefore(today))
                .flatMap(row -> keys.open(
                        Base64.getDecoder().decode(row.sealed()), bound(row.handle(), row.lastDay())));
    }

    /** Deletes what is too old. @throws NotKeptException if the database cannot be written */
    public void forgetOld() {
        rows.forgetBefore(LocalDate.now(clock));
    }

    /** So that no row can be put in another's place or kept for longer by whoever can write into the database. */
    private static String bound(String handle, LocalDate lastDay) {
        return handle + " " + lastDay;
    }

    private synchronized byte[] salt() {
        Optional<String> known = memory.find(SALT);
        if (known.isPresent()) {
            return HexFormat.of().parseHex(known.get());
        }
        byte[] salt = new byte[SALT_BYTES];
        random.nextBytes(salt);
        // Another kiosk may make one at the same moment; there must be one salt only.
        return HexFormat.of().parseHex(memory.settle(SALT, HexFormat.of().formatHex(salt)));
    }
}
