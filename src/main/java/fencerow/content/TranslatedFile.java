package fencerow.content;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is kept of a language's translations: the fingerprint of the original that each one translates, on a line of its
 * own. Written by the program, sorted, so that two people's changes lie apart.
 */
final class TranslatedFile {
    /** Its name in the folder of the language. */
    static final String NAME = "translated.tsv";

    private static final Pattern LINE = Pattern.compile("([a-z0-9./-]+)\t([0-9a-f]{" + Fingerprint.DIGITS + "})");
    private static final String HEAD = "# key or article, and the fingerprint of the English it translates."
            + " Kept by: fencerow translations accept\n";

    private final Map<String, Entry> entries = new TreeMap<>();

    /** Nothing yet. */
    TranslatedFile() {}

    /** What the file keeps; a line that cannot be read is reported. */
    TranslatedFile(SourceFile file, Problems problems) {
        String[] lines = file.text().split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            Matcher matcher = LINE.matcher(lines[i]);
            if (matcher.matches()) {
                entries.put(matcher.group(1), new Entry(matcher.group(2), file.at(i + 1)));
            } else if (!lines[i].isBlank() && !lines[i].startsWith("#")) {
                problems.error(file.at(i + 1), "this is not a key, a tab and a fingerprint",
                        "delete the line; then accept what it was about");
            }
        }
    }

    /** A fingerprint and where it is kept. */
    record Entry(String fingerprint, Place place) {}

    /** The fingerprints by key. */
    Map<String, Entry> entries() {
        return entries;
    }

    /** The text of a file that keeps these. */
    static String text(Map<String, String> fingerprints) {
        var text = new StringBuilder(HEAD);
        new TreeMap<>(fingerprints).forEach((key, fingerprint) ->
                text.append(key).append('\t').append(fingerprint).append('\n'));
        return text.toString();
    }
}
