package fencerow.content;

import fencerow.needs.Job;
import fencerow.needs.Question;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.Feature;
import fencerow.terms.Figure;
import fencerow.terms.OptionId;
import fencerow.visit.Worksheet;
import fencerow.wording.SizingWords;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Sees that every record has its words in the original language, and that no words are left over. */
final class WordCheck {
    /** First parts of keys that belong to records; all others are the program's own words. */
    private static final Map<String, Kind> KINDS = new TreeMap<>(Map.ofEntries(
            Map.entry("feature", Kind.FEATURE), Map.entry("add-on", Kind.ADD_ON),
            Map.entry("attachment", Kind.ATTACHMENT), Map.entry("job", Kind.JOB),
            Map.entry("capability", Kind.CAPABILITY), Map.entry("state", Kind.STATE),
            Map.entry("condition", Kind.CONDITION), Map.entry("question", Kind.QUESTION),
            Map.entry("quiz", Kind.QUIZ), Map.entry("line", Kind.LINE), Map.entry("glossary", Kind.WORD),
            Map.entry("caution", Kind.CAUTION), Map.entry("topic", Kind.TOPIC),
            Map.entry("picture", Kind.PICTURE)));

    private final Ids ids;
    private final Problems problems;
    private final Map<String, Place> required = new TreeMap<>();
    private final Set<String> optional = new HashSet<>();

    /** Starts with what needs no more than its id; {@code figures} is where words of data-sheet figures are missed. */
    WordCheck(Ids ids, Place figures, Problems problems) {
        this.ids = ids;
        this.problems = problems;
        each(Kind.ADD_ON, "add-on", "name");
        each(Kind.ATTACHMENT, "attachment", "name", "short", "trade-off");
        each(Kind.CAPABILITY, "capability", "name", "demand");
        each(Kind.STATE, "state", "name");
        each(Kind.CONDITION, "condition", "name");
        each(Kind.WORD, "glossary", "word", "means");
        each(Kind.PICTURE, "picture", "alt");
        ids.all(Kind.WORD).forEach(id ->
                optional.addAll(List.of("glossary." + id + ".also", "glossary." + id + ".topic")));
        ids.all(Kind.CAUTION).forEach(id -> require(Kind.CAUTION, id, "caution." + id));
        ids.all(Kind.TOPIC).forEach(id -> optional.add("topic." + id + ".name"));
        for (Figure figure : Figure.values()) {
            required.put("capability." + figure.id() + ".name", figures);
            required.put("capability." + figure.id() + ".demand", figures);
        }
    }

    private void each(Kind kind, String prefix, String... parts) {
        for (String id : ids.all(kind)) {
            for (String part : parts) {
                require(kind, id, prefix + "." + id + "." + part);
            }
        }
    }

    private void require(Kind kind, String id, String key) {
        ids.find(kind, id).ifPresent(place -> required.put(key, place));
    }

    WordCheck features(Collection<Feature> features) {
        each(Kind.FEATURE, "feature", "name", "short", "check", "good", "bad", "belief", "truth");
        for (Feature feature : features) {
            String id = feature.id().value();
            feature.kinds().forEach(kind -> require(Kind.FEATURE, id, "feature." + id + ".kind." + kind));
        }
        return this;
    }

    WordCheck jobs(Collection<Job> jobs) {
        each(Kind.JOB, "job", "name", "want");
        for (Job job : jobs) {
            for (Job.OtherWay way : Job.OtherWay.values()) {
                String key = "job." + job.id() + "." + way.id();
                if (job.yearly().containsKey(way)) {
                    require(Kind.JOB, job.id().value(), key);
                } else {
                    optional.add(key);
                }
            }
        }
        return this;
    }

    WordCheck questions(Collection<Question> questions) {
        each(Kind.QUESTION, "question", "ask", "why");
        for (Question question : questions) {
            for (Question.Option option : question.options()) {
                String key = "question." + question.id() + ".option." + option.id();
                if (question.choose() != Question.Choose.JOBS) {
                    require(Kind.OPTION, question.id() + "/" + option.id(), key + ".label");
                }
                optional.add(key + ".hint");
            }
        }
        return this;
    }

    WordCheck quiz(Collection<QuizQuestion> questions) {
        each(Kind.QUIZ, "quiz", "ask", "right");
        for (QuizQuestion question : questions) {
            String id = question.id().value();
            for (OptionId option : question.options()) {
                String key = "quiz." + id + ".option." + option;
                if (question.kind() == QuizQuestion.Kind.CHECK) {
                    require(Kind.QUIZ, id, key + ".label");
                }
                if (!option.equals(question.key())) {
                    require(Kind.QUIZ, id, key + ".no");
                }
            }
        }
        return this;
    }

    /** Lines without a feature need words of their own; those with one may have them, all or none. */
    WordCheck lines(Map<String, Boolean> linesWithFeature, Set<String> written) {
        linesWithFeature.forEach((id, hasFeature) -> {
            optional.add("line." + id + ".sign");
            List<String> keys = List.of("what", "how", "good", "bad").stream()
                    .map(part -> "line." + id + "." + part)
                    .toList();
            if (!hasFeature || keys.stream().anyMatch(written::contains)) {
                keys.forEach(key -> require(Kind.LINE, id, key));
            }
        });
        return this;
    }

    /** All that a person may be shown of the calculations on offer. */
    WordCheck worksheets(Collection<Worksheet> worksheets) {
        worksheets.forEach(sheet -> SizingWords.keys(sheet.calculation()).forEach(key ->
                require(Kind.CALCULATION, sheet.id(), key)));
        return this;
    }

    /**
     * Holds the original's words against what is asked for.
     *
     * @param complete whether all of its files could be read; if not, nothing can be called missing
     */
    void check(String language, Map<String, TextsReader.Text> texts, boolean complete) {
        required.forEach((key, place) -> {
            if (complete && !texts.containsKey(key)) {
                problems.error(place, "there are no words for [" + key + "] in language [" + language + "]",
                        "add them to a file of the folder " + language);
            }
        });
        texts.forEach((key, text) -> {
            if (isDead(key)) {
                problems.warning(text.place(), "nothing asks for the words [" + key + "]", advice(key));
            }
        });
    }

    /** Whether the words are the program's own and belong to no record. */
    private static boolean isOwn(String key) {
        return !KINDS.containsKey(key.split("\\.", 2)[0]);
    }

    private boolean isDead(String key) {
        return !isOwn(key) && !required.containsKey(key) && !optional.contains(key);
    }

    private String advice(String key) {
        String[] parts = key.split("\\.", 3);
        Kind kind = KINDS.getOrDefault(parts[0], Kind.FEATURE);
        if (parts.length > 1 && !ids.knows(kind, parts[1])) {
            return "there is no " + kind.word() + " [" + parts[1] + "]; "
                    + Nearest.advice(parts[1], ids.all(kind), "delete them");
        }
        List<String> known = new ArrayList<>(required.keySet());
        known.addAll(optional);
        return Nearest.advice(key, known, "delete them");
    }
}
