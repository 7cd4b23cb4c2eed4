package fencerow.desk;

import java.security.SecureRandom;
import java.util.Locale;
import java.util.Optional;

/**
 * The code on a shopper's paper that brings their answers back: eleven characters drawn by chance and a check
 * character, written in three groups of four. The alphabet is that of D. Crockford's Base 32: ten digits and the
 * letters without I, L, O and U, so that who reads a one as an I or a nought as an O still types the right code.
 *
 * <p>Eleven of 32 characters are 55 bits. Whoever steals the database must try codes, and each try costs the
 * {@value ComeBackBook#ROUNDS} rounds of {@link ComeBackBook}. A large graphics card does some 9e9 rounds a second
 * (from memory, 2022 figures), so 1.5e4 codes a second; with 1,200 visits kept at once it finds the first after 2^55 /
 * 1,200 / 2 tries, about 30 years, and a certain one after 38,000 years on the average. What there is to find says what
 * work somebody has and not who they are.
 *
 * @param symbols the twelve characters
 */
public record ComeBackCode(String symbols) {
    /** How many characters there are. */
    public static final int LENGTH = 12;

    /** The characters a code can have. */
    public static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int GROUP = 4;
    private static final CheckCharacter CHECK = new CheckCharacter(ALPHABET);

    /** @throws IllegalArgumentException if it is no code, or its check character is another */
    public ComeBackCode {
        if (symbols.length() != LENGTH || !CHECK.holds(symbols)) {
            throw new IllegalArgumentException("this is no code: the check character does not fit; read it again");
        }
    }

    /** Draws a new one. */
    public static ComeBackCode draw(SecureRandom random) {
        var drawn = new StringBuilder();
        for (int i = 1; i < LENGTH; i++) {
            drawn.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return new ComeBackCode(drawn.toString() + CHECK.of(drawn.toString()));
    }

    /** The code that somebody typed, however they grouped it; empty if they made a mistake. */
    public static Optional<ComeBackCode> findTyped(String typed) {
        String symbols = symbols(typed);
        return symbols.length() == LENGTH && CHECK.holds(symbols)
                ? Optional.of(new ComeBackCode(symbols))
                : Optional.empty();
    }

    /** The characters typed so far as a code has them; what none has is left out. */
    public static String symbols(String typed) {
        var symbols = new StringBuilder();
        typed.toUpperCase(Locale.ROOT).chars()
                .map(each -> switch (each) {
                    case 'O' -> '0';
                    case 'I', 'L' -> '1';
                    default -> each;
                })
                .filter(each -> ALPHABET.indexOf(each) >= 0)
                .forEach(each -> symbols.append((char) each));
        return symbols.toString();
    }

    /** In groups of four with hyphens, whole or begun. */
    public static String grouped(String symbols) {
        return symbols.replaceAll("(.{" + GROUP + "})(?=.)", "$1-");
    }

    /** As it is printed. */
    public String written() {
        return grouped(symbols);
    }

    /** Never the code: a record's text may end in a log. */
    @Override
    public String toString() {
        return "ComeBackCode[hidden]";
    }
}
