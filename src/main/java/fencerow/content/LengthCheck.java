package fencerow.content;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Warns of words too long for where they are shown: labels on buttons, lines read standing up. */
final class LengthCheck {
    private static final int LONGEST_NAME = 40;
    private static final double TRANSLATED = 1.25;

    private static final List<Limit> LIMITS = List.of(
            new Limit("(feature|line)\\.[^.]+\\.how|feature\\.[^.]+\\.check", 19),
            new Limit("(feature|line)\\.[^.]+\\.(good|bad)", 13),
            new Limit("line\\.[^.]+\\.what", 8),
            new Limit("picture\\.[^.]+\\.alt", 45));
    private static final Pattern NAME = Pattern.compile("(feature|add-on|attachment|job)\\.[^.]+\\.name");

    private LengthCheck() {}

    private record Limit(Pattern keys, int words) {
        Limit(String keys, int words) {
            this(Pattern.compile(keys), words);
        }
    }

    /** Looks at one language's words; those of a translation may be a quarter longer. */
    static void check(Map<String, TextsReader.Text> texts, boolean translated, Problems problems) {
        double room = translated ? TRANSLATED : 1;
        texts.forEach((key, text) -> {
            int words = text.words().split("\\s+", -1).length;
            for (Limit limit : LIMITS) {
                int most = (int) (room * limit.words());
                if (words > most && limit.keys().matcher(key).matches()) {
                    problems.warning(text.place(), "[" + key + "] has " + words + " words", "use at most " + most);
                }
            }
            int longest = (int) (room * LONGEST_NAME);
            if (NAME.matcher(key).matches() && text.words().length() > longest) {
                problems.warning(text.place(), "[" + key + "] has " + text.words().length() + " characters",
                        "use at most " + longest);
            }
        });
    }
}
