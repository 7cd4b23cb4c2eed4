package fencerow.kiosk.frame;

import fencerow.search.Kind;
import fencerow.sizing.catalogue.Inputs;
import fencerow.terms.MachineClass;
import fencerow.terms.QuestionId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import fencerow.terms.UnitId;
import fencerow.visit.Visit;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Where a shopper can be in the kiosk. A place is a value: opening it again shows the same screen in the same state, so
 * "back" leads to where one was. {@code scroll} runs from 0 at the top to 1 at the end.
 */
public sealed interface Place {
    /** The word for it in text keys: its name in small letters with hyphens, such as {@code side-by-side}. */
    default String key() {
        return getClass().getSimpleName().replaceAll("(?<=.)(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /** Nobody is here: what the kiosk shows to passers-by. */
    record Attract() implements Place {}

    /** The three doors. */
    record Home() implements Place {}

    /**
     * All explainers.
     *
     * @param stop the stop whose topics are shown; the core topics if empty
     */
    record Topics(Optional<Stop> stop, double scroll) implements Place {
        /** The core topics, from the top. */
        public static final Topics FIRST = new Topics(Optional.empty(), 0);
    }

    /**
     * The search.
     *
     * @param query what is typed
     * @param kind  the only kind of hits shown; all if empty
     */
    record Find(String query, Optional<Kind> kind, double scroll) implements Place {
        /** Nothing typed yet. */
        public static final Find EMPTY = new Find("", Optional.empty(), 0);
    }

    /** One explainer. */
    record Topic(TopicId topic, double scroll) implements Place {
        /** From the top. */
        public static Topic of(TopicId topic) {
            return new Topic(topic, 0);
        }
    }

    /**
     * The questionnaire.
     *
     * @param question the question shown; the next open one if empty
     * @param skipped  questions passed over on this way through
     * @param alone    whether only this answer is to be changed, so that the shopper goes back after it
     */
    record Questions(Optional<QuestionId> question, Set<QuestionId> skipped, boolean alone, double scroll)
            implements Place {
        /** The next open question. */
        public static final Questions NEXT = new Questions(Optional.empty(), Set.of(), false, 0);

        /** Copies the set. */
        public Questions {
            skipped = Set.copyOf(skipped);
        }

        /** One question, to change the answer to it. */
        public static Questions only(QuestionId question) {
            return new Questions(Optional.of(question), Set.of(), true, 0);
        }
    }

    /** Every question with its answer. */
    record AllAnswers(double scroll) implements Place {
        /** From the top. */
        public static final AllAnswers TOP = new AllAnswers(0);
    }

    /**
     * Which units suit.
     *
     * @param all whether all of them are shown rather than the first few
     */
    record Results(boolean all, double scroll) implements Place {
        /** The first few, from the top. */
        public static final Results TOP = new Results(false, 0);
    }

    /** Everything on one unit. */
    record UnitSheet(UnitId unit, double scroll) implements Place {
        /** From the top. */
        public static UnitSheet of(UnitId unit) {
            return new UnitSheet(unit, 0);
        }
    }

    /** The pinned units beside each other. */
    record SideBySide(double scroll) implements Place {
        /** From the top. */
        public static final SideBySide TOP = new SideBySide(0);
    }

    /**
     * A salesperson and a shopper talk it over: what if.
     *
     * @param before the visit as it was when they began, to go back to
     */
    record Guide(Visit before, double scroll) implements Place {}

    /**
     * Another seller's tractor: telling of it, then seeing it beside the ones here.
     *
     * @param size picked while nothing else is told yet
     */
    record SecondQuote(Step step, Optional<MachineClass> size, double scroll) implements Place {
        /** The first step. */
        public static final SecondQuote FIRST = of(Step.MACHINE);

        /** A step, from the top. */
        public static SecondQuote of(Step step) {
            return new SecondQuote(step, Optional.empty(), 0);
        }

        /** Steps of telling. */
        public enum Step {
            /** Size, age and hours. */
            MACHINE,
            /** What the seller asks. */
            PRICE,
            /** What is on it. */
            EQUIPMENT,
            /** Beside the best one here. */
            BESIDE;

            /** The step after this; the last is its own next. */
            public Step next() {
                return switch (this) {
                    case MACHINE -> PRICE;
                    case PRICE -> EQUIPMENT;
                    case EQUIPMENT, BESIDE -> BESIDE;
                };
            }
        }
    }

    /**
     * The quiz.
     *
     * @param question the question shown; the one with the most at stake if empty
     */
    record Quiz(Optional<QuestionId> question, double scroll) implements Place {
        /** The question with the most at stake. */
        public static final Quiz NEXT = new Quiz(Optional.empty(), 0);

        /** A certain question. */
        public static Quiz of(QuestionId question) {
            return new Quiz(Optional.of(question), 0);
        }
    }

    /** What the quiz has shown so far. */
    record QuizSummary(double scroll) implements Place {
        /** From the top. */
        public static final QuizSummary TOP = new QuizSummary(0);
    }

    /** The shopper's list before it is printed. */
    record ListPreview(double scroll) implements Place {
        /** From the top. */
        public static final ListPreview TOP = new ListPreview(0);
    }

    /** Calculations, those of the first area if none is named. */
    record Work(Optional<fencerow.sizing.catalogue.Topic> area, double scroll) implements Place {
        /** The first area, from the top. */
        public static final Work FIRST = new Work(Optional.empty(), 0);
    }

    /**
     * One calculation, filled in with the unit's figures, then with what the shopper gave; all inputs shown, or the
     * first few.
     */
    record Worksheet(String calculation, Optional<UnitId> unit, Inputs given, boolean all, double scroll)
            implements Place {
        /** With nothing set yet, for no tractor in particular. */
        public static Worksheet of(String calculation) {
            return new Worksheet(calculation, Optional.empty(), Inputs.NONE, false, 0);
        }

        /** With the figures of a tractor. */
        public static Worksheet of(String calculation, UnitId unit) {
            return new Worksheet(calculation, Optional.of(unit), Inputs.NONE, false, 0);
        }
    }

    /** Printing the list. */
    record Print() implements Place {}

    /** Typing the code of an earlier visit, as far as it is typed. */
    record EnterCode(String typed) implements Place {
        /** Nothing typed yet. */
        public static final EnterCode EMPTY = new EnterCode("");
    }

    /** Behind the staff door; as long as no PIN was given, the door is shown instead. */
    sealed interface ForStaff extends Place {}

    /** What staff can do. */
    record Staff() implements ForStaff {}

    /**
     * All units, sold ones included.
     *
     * @param which  of them
     * @param words  that they must have in their name or id
     * @param typing whether the keyboard is shown
     * @param page   counted from 0
     */
    record StaffUnits(Which which, String words, boolean typing, int page) implements ForStaff {
        /** All of them. */
        public static final StaffUnits ALL = new StaffUnits(Which.ALL, "", false, 0);

        /** Ways to narrow the list. */
        public enum Which { ALL, OPEN, HELD, SOLD, UNKNOWNS }
    }

    /** One unit as it is written. */
    record StaffUnit(UnitId unit, double scroll) implements ForStaff {
        /** From the top. */
        public static StaffUnit of(UnitId unit) {
            return new StaffUnit(unit, 0);
        }
    }

    /** What nobody has checked on one unit. */
    record StaffVerify(UnitId unit, double scroll) implements ForStaff {}

    /**
     * Adding a unit.
     *
     * @param id        as typed
     * @param model     chosen; blank before
     * @param condition chosen
     * @param dollars   asked, as typed
     */
    record StaffAdd(Step step, String id, String model, String condition, String dollars) implements ForStaff {
        /** Nothing told yet. */
        public static final StaffAdd FIRST = new StaffAdd(Step.ID, "", "", "new", "");

        /** Steps of telling. */
        public enum Step { ID, MODEL, PRICE }
    }

    /** What the visits of a period tell. */
    record StaffReport(Period period, double scroll) implements ForStaff {
        /** Of this month so far. */
        public static final StaffReport FIRST = new StaffReport(Period.THIS_MONTH, 0);

        /** Up to today, but for the last month. */
        public enum Period { THIS_MONTH, LAST_MONTH, YEAR }
    }

    /** What was changed of late. */
    record StaffChanges(double scroll) implements ForStaff {}
}
