package fencerow.desk;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * What a code opens: a handle to find a row by and a key to open it with. Both come of one costly derivation (PBKDF2)
 * and are told apart by HKDF (RFC 5869), so that the handle, which lies open in the database, says nothing of the key
 * and costs as much to try.
 *
 * @param handle in hexadecimal digits
 * @param key    for AES-GCM with 256 bits (NIST SP 800-38D)
 */
record CodeKeys(String handle, SecretKeySpec key) {
    private static final String MAC = "HmacSHA256";
    private static final String CIPHER = "AES/GCM/NoPadding";
    private static final int KEY_BYTES = 32;
    private static final int HANDLE_BYTES = 16;
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    /** Sealed texts are as long as a multiple of this, so that their length does not tell how much was answered. */
    private static final int PAD = 512;

    /** Derives them; takes a good part of a second with many rounds, on purpose. */
    static CodeKeys of(ComeBackCode code, byte[] salt, int rounds) {
        byte[] master = Pin.derive(code.symbols(), salt, rounds, KEY_BYTES);
        byte[] handle = Arrays.copyOf(expand(master, ascii("fencerow come-back handle")), HANDLE_BYTES);
        return new CodeKeys(HexFormat.of().formatHex(handle),
                new SecretKeySpec(expand(master, ascii("fencerow come-back key")), "AES"));
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** The first 32 bytes that HKDF expands a key to (RFC 5869, section 2.3: the block T(1)). */
    static byte[] expand(byte[] key, byte[] info) {
        try {
            Mac mac = Mac.getInstance(MAC);
            mac.init(new SecretKeySpec(key, MAC));
            mac.update(info);
            mac.update((byte) 1);
            return mac.doFinal();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this Java has no " + MAC + "; run another", e);
        }
    }

    /**
     * Seals a text.
     *
     * @param bound what stands open beside it and must not be changed
     */
    byte[] seal(String text, String bound, SecureRandom random) {
        byte[] nonce = new byte[NONCE_BYTES];
        random.nextBytes(nonce);
        byte[] plain = text.getBytes(StandardCharsets.UTF_8);
        var sealed = new ByteArrayOutputStream();
        sealed.writeBytes(nonce);
        try {
            sealed.writeBytes(cipher(Cipher.ENCRYPT_MODE, nonce, bound)
                    .doFinal(Arrays.copyOf(plain, (plain.length / PAD + 1) * PAD)));
        } catch (GeneralSecurityException e) {
            throw unusable(e);
        }
        return sealed.toByteArray();
    }

    /** The text that was sealed; empty if it was sealed otherwise or has been changed. */
    Optional<String> open(byte[] sealed, String bound) {
        if (sealed.length <= NONCE_BYTES) {
            return Optional.empty();
        }
        try {
            byte[] padded = cipher(Cipher.DECRYPT_MODE, Arrays.copyOf(sealed, NONCE_BYTES), bound)
                    .doFinal(sealed, NONCE_BYTES, sealed.length - NONCE_BYTES);
            String text = new String(padded, StandardCharsets.UTF_8);
            int end = text.indexOf('\0');
            return Optional.of(end < 0 ? text : text.substring(0, end));
        } catch (AEADBadTagException e) {
            return Optional.empty();
        } catch (GeneralSecurityException e) {
            throw unusable(e);
        }
    }

    private Cipher cipher(int mode, byte[] nonce, String bound) throws GeneralSecurityException {
        Cipher cipher = Cipher.getInstance(CIPHER);
        cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(bound.getBytes(StandardCharsets.UTF_8));
        return cipher;
    }

    private static IllegalStateException unusable(GeneralSecurityException e) {
        return new IllegalStateException("this Java cannot do " + CIPHER + " with 256 bits; run another", e);
    }

    /** Never the key: a record's text may end in a log. */
    @Override
    public String toString() {
        return "CodeKeys[hidden]";
    }
}
