package fencerow.desk;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * What opens the staff area, as the configuration writes it: plain digits in a demo, else a hash made by PBKDF2 (RFC
 * 8018, with HMAC-SHA-256) that does not give the digits away to whoever reads the file. Checking one takes a good part
 * of a second, on purpose.
 *
 * <p>Four to eight digits can be tried out by whoever has the file and the time: the hash keeps the PIN from being read
 * over a shoulder, {@link StaffLock} keeps it from being tried out at the screen.
 *
 * @param setting {@code pbkdf2-sha256$ROUNDS$SALT$HASH}, salt and hash in base 64; or 4 to 8 digits
 */
public record Pin(String setting) {
    /** How a PIN is typed. */
    public static final Pattern DIGITS = Pattern.compile("\\d{4,8}");

    private static final Pattern HASH =
            Pattern.compile("pbkdf2-sha256\\$(\\d{4,8})\\$([A-Za-z0-9+/=]+)\\$([A-Za-z0-9+/=]+)");
    private static final String ALGORITHM = "PBKDF2WithHmacSHA256";
    private static final int ROUNDS = 600_000;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;

    /** @throws IllegalArgumentException if it is written neither way */
    public Pin {
        if (!DIGITS.matcher(setting).matches() && !HASH.matcher(setting).matches()) {
            throw new IllegalArgumentException("the PIN's hash is not written as one; make one by the command pin");
        }
    }

    /**
     * Hashes a PIN.
     *
     * @param digits 4 to 8
     * @param salts  where the salt comes from
     * @throws IllegalArgumentException if it is not 4 to 8 digits
     */
    public static Pin hash(String digits, SecureRandom salts) {
        if (!DIGITS.matcher(digits).matches()) {
            throw new IllegalArgumentException("the PIN is not 4 to 8 digits; choose another");
        }
        byte[] salt = new byte[SALT_BYTES];
        salts.nextBytes(salt);
        Base64.Encoder base64 = Base64.getEncoder();
        return new Pin("pbkdf2-sha256$" + ROUNDS + "$" + base64.encodeToString(salt) + "$"
                + base64.encodeToString(derive(digits, salt, ROUNDS, HASH_BYTES)));
    }

    /** Whether these are its digits. Takes as long whether they are or not. */
    public boolean matches(String digits) {
        Matcher hash = HASH.matcher(setting);
        if (!hash.matches()) {
            return MessageDigest.isEqual(
                    setting.getBytes(StandardCharsets.UTF_8), digits.getBytes(StandardCharsets.UTF_8));
        }
        byte[] expected = Base64.getDecoder().decode(hash.group(3));
        byte[] salt = Base64.getDecoder().decode(hash.group(2));
        return MessageDigest.isEqual(
                expected, derive(digits, salt, Integer.parseInt(hash.group(1)), expected.length));
    }

    /** The key that PBKDF2 derives from a password. */
    static byte[] derive(String password, byte[] salt, int rounds, int bytes) {
        try {
            var spec = new PBEKeySpec(password.toCharArray(), salt, rounds, bytes * Byte.SIZE);
            return SecretKeyFactory.getInstance(ALGORITHM).generateSecret(spec).getEncoded();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java has no " + ALGORITHM + "; run another", e);
        }
    }

    /** Never the setting: a record's text may end in a log. */
    @Override
    public String toString() {
        return "Pin[hidden]";
    }
}
