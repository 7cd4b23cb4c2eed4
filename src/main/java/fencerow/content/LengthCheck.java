package fencerow.content;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Warns of words too long for where they are shown: labels on buttons, lines read standing up. */
final class LengthCheck {
    private static final int LONGEST_NAME = 40;

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

    static void check(Map<String, TextsReader.Text> texts, Problems problems) {
        texts.forEach((key, text) -> {
            int words = text.words().split("\\s+", -1).length;
            for (Limit limit : LIMITS) {
                if (limit.keys().matcher(key).matches() && words > limit.words()) {
                    problems.warning(text.place(), "[" + key + "] has " + words + " words",
                            "use at most " + limit.words());
                }
            }
            if (NAME.matcher(key).matches() && text.words().length() > LONGEST_NAME) {
                problems.warning(text.place(), "[" + key + "] has " + text.words().length() + " characters",
                        "use at most " + LONGEST_NAME);
            }
        });
    }
}
