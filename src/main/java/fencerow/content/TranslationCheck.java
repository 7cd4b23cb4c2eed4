package fencerow.content;

import fencerow.wording.TextPattern;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Holds what one language says against the original: nothing missing, nothing left over, nothing out of date. */
final class TranslationCheck {
    private final String original;
    private final Map<String, TextsReader.Text> originals;
    private final Problems problems;

    /** Against a language's words and articles. */
    TranslationCheck(String original, Translatable originals, Problems problems) {
        this.original = original;
        this.originals = originals.byKey();
        this.problems = problems;
    }

    /**
     * Holds a language against the original.
     *
     * @param kept     what is kept of its translations
     * @param where    the file that is kept in
     * @param complete whether all of the language's files could be read; if not, nothing can be called missing
     * @return how far it is translated
     */
    Translation check(String language, Translatable words, Optional<TranslatedFile> kept, Place where,
            boolean complete) {
        Map<String, TextsReader.Text> own = words.byKey();
        Map<String, TranslatedFile.Entry> entries = kept.orElse(new TranslatedFile()).entries();
        String accept = "fencerow translations accept " + language;
        if (kept.isEmpty() && !own.isEmpty()) {
            problems.warning(where, "nobody has said that the words in language [" + language
                    + "] translate the present ones", "read them against the original, then run: " + accept);
        }
        int current = 0;
        int stale = 0;
        int unaccepted = 0;
        int missing = 0;
        for (var each : originals.entrySet()) {
            String key = each.getKey();
            Optional<TextsReader.Text> text = Optional.ofNullable(own.get(key));
            Optional<TranslatedFile.Entry> entry = Optional.ofNullable(entries.get(key));
            if (text.isEmpty()) {
                missing++;
                if (complete) {
                    miss(language, key, each.getValue());
                }
            } else {
                compareArguments(key, text.get(), each.getValue());
                if (entry.isEmpty()) {
                    unaccepted++;
                    if (kept.isPresent()) {
                        problems.warning(text.get().place(), "nobody has said that [" + key
                                + "] translates the present original at " + each.getValue().place(),
                                "read both, then run: " + accept + " " + key);
                    }
                } else if (entry.get().fingerprint().equals(Fingerprint.of(each.getValue().words()))) {
                    current++;
                } else {
                    stale++;
                    problems.warning(text.get().place(), "[" + key + "] is a translation of what "
                            + each.getValue().place() + " said before it was changed",
                            "translate it anew, then run: " + accept + " " + key);
                }
            }
        }
        own.forEach((key, text) -> leftOver(key, text.place()));
        entries.forEach((key, entry) -> {
            if (!originals.containsKey(key)) {
                problems.warning(entry.place(), "there is no [" + key + "] any more", "run: " + accept);
            }
        });
        return new Translation(current, stale, unaccepted, missing);
    }

    private void miss(String language, String key, TextsReader.Text text) {
        String file = text.place().file().replace("/" + original + "/", "/" + language + "/");
        if (key.startsWith(Translatable.ARTICLES)) {
            problems.error(text.place(), "the article is not there in language [" + language + "]",
                    "write " + file);
        } else {
            problems.error(text.place(), "there are no words for [" + key + "] in language [" + language + "]",
                    "translate them in " + file);
        }
    }

    private void leftOver(String key, Place place) {
        if (!originals.containsKey(key)) {
            problems.error(place, "[" + key + "] is not there in language [" + original + "]",
                    Nearest.advice(key, originals.keySet(), "delete it"));
        }
    }

    private void compareArguments(String key, TextsReader.Text text, TextsReader.Text first) {
        if (key.startsWith(Translatable.ARTICLES)
                || TextPattern.flaw(text.words()).isPresent() || TextPattern.flaw(first.words()).isPresent()) {
            return;
        }
        Set<String> known = TextPattern.arguments(first.words());
        Set<String> used = TextPattern.arguments(text.words());
        for (String argument : minus(used, known)) {
            problems.error(text.place(), "[" + key + "] has an argument {" + argument + "} that ["
                    + first.place() + "] has not", Nearest.advice(argument, known, "use its arguments only"));
        }
        for (String argument : minus(known, used)) {
            problems.error(text.place(), "[" + key + "] has not the argument {" + argument + "} that ["
                    + first.place() + "] has", "put it where it belongs in the sentence");
        }
    }

    private static Set<String> minus(Set<String> all, Set<String> without) {
        Set<String> rest = new TreeSet<>(all);
        rest.removeAll(without);
        return rest;
    }
}
