package fencerow.desk;

import java.util.Comparator;

/**
 * Something that is counted. None of them says who, when in the day, or together with what.
 *
 * @param kind    what is counted
 * @param subject of what: a question, a topic, a unit; empty where the kind says it all
 * @param detail  what more; mostly empty
 */
public record Counter(Kind kind, String subject, String detail) implements Comparable<Counter> {
    private static final Comparator<Counter> ORDER =
            Comparator.comparing(Counter::kind).thenComparing(Counter::subject).thenComparing(Counter::detail);

    /** What is counted. */
    public enum Kind {
        /** Visits that ended. */
        VISIT("visit"),
        /** Visits in which a question about the work was put. */
        ASKED("asked"),
        /** Visits in which it was answered. */
        ANSWERED("answered"),
        /** Quiz answers that were right; the subject is the question. */
        BELIEF_RIGHT("belief-right"),
        BELIEF_WRONG("belief-wrong"),
        BELIEF_UNSURE("belief-unsure"),
        /** Ordinary words that were searched for and found nothing. */
        NOT_FOUND("not-found"),
        /** Visits in which the explainer was opened. */
        READ("read"),
        /** Visits with must-haves in which the unit was held against them. */
        UNIT_ASKED("unit-asked"),
        /** Those in which it had a plan. */
        UNIT_FITTED("unit-fitted"),
        /** Those in which it had one only with the add-on; the detail is the add-on. */
        UNIT_LACKED("unit-lacked"),
        /** Those in which it had none; the detail is the capability that was short. */
        UNIT_SHORT("unit-short"),
        /** Those in which the verdict hung on a feature nobody has checked; the detail is the feature. */
        UNIT_UNCHECKED("unit-unchecked"),
        /** Visits with must-haves for which no unit had a plan; the subject is a capability that was short. */
        UNMET("unmet"),
        /** Visits in which the add-on, fitted ahead, would have made a unit ready; the detail is the unit. */
        WOULD_READY("would-ready"),
        /** Lists printed. */
        PRINTED("printed"),
        /** Times a screen was shown. */
        SHOWN("shown"),
        /** Seconds a screen was shown. */
        SECONDS("seconds"),
        /** Failures in a visit; the subject is their type. */
        FAILED("failed");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** The word used in the database. */
        public String id() {
            return id;
        }
    }

    /** One of a kind that needs no detail. */
    public static Counter of(Kind kind, String subject) {
        return new Counter(kind, subject, "");
    }

    @Override
    public int compareTo(Counter other) {
        return ORDER.compare(this, other);
    }
}
