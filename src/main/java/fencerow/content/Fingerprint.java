package fencerow.content;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A short word that changes whenever one of several texts does: the first 8 hex digits of a SHA-256 over them. */
final class Fingerprint {
    /** How many characters it has. */
    static final int DIGITS = 8;

    private final MessageDigest digest;

    Fingerprint() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The fingerprint of one text. */
    static String of(String text) {
        return new Fingerprint().add(text).word();
    }

    Fingerprint add(String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
        return this;
    }

    /** What all texts so far come to; nothing may be added after it. */
    String word() {
        return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    }
}
