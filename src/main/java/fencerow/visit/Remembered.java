package fencerow.visit;

import fencerow.needs.Answer;
import fencerow.needs.Question;
import fencerow.quiz.Belief;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A visit that was written down to be gone on with another day, perhaps with other content and other stock. Written
 * down are ids and amounts only: answers, beliefs, pins, must-haves set aside and lines struck out. Another seller's
 * tractor is not.
 *
 * @param visit       as far as it makes sense here and now
 * @param lostAnswers how many answers are about what is no longer asked
 * @param lostUnits   how many pinned units are no longer here
 */
public record Remembered(Visit visit, int lostAnswers, int lostUnits) {
    private static final String ANSWER = "answer";
    private static final String AMOUNT = "amount";
    private static final String NOT_SURE = "not-sure";
    private static final String BELIEF = "belief";
    private static final String SURE = "sure";
    private static final String PIN = "pin";
    private static final String ASIDE = "aside";
    private static final String STRUCK = "struck";

    /** Writes a visit down, a line for each thing said: what it is, its id and what was said, between spaces. */
    public static String write(Visit visit) {
        List<String> lines = new ArrayList<>();
        visit.answers().byQuestion().forEach((question, answer) -> lines.add(line(question, answer)));
        visit.beliefs().byQuestion().forEach((question, belief) -> lines.add(String.join(" ",
                belief.sure() ? SURE : BELIEF, question.value(), belief.option().map(OptionId::value).orElse(""))));
        visit.pinned().forEach(unit -> lines.add(PIN + " " + unit.value()));
        visit.setAside().stream().sorted().forEach(must -> lines.add(ASIDE + " " + must));
        visit.leftOut().stream().sorted().forEach(line -> lines.add(STRUCK + " " + line));
        return String.join("\n", lines);
    }

    private static String line(QuestionId question, Answer answer) {
        if (answer instanceof Answer.Measured measured) {
            Amount amount = measured.amount();
            return String.join(" ", AMOUNT, question.value(), amount.dimension().name(), Double.toString(amount.si()));
        }
        if (answer instanceof Answer.Chosen chosen) {
            List<String> words = new ArrayList<>(List.of(ANSWER, question.value()));
            chosen.options().forEach(option -> words.add(option.value()));
            return String.join(" ", words);
        }
        return NOT_SURE + " " + question.value();
    }

    /** Reads what was written down; what this showroom does not know is left out and counted. */
    public static Remembered read(String text, Showroom showroom) {
        var reader = new Reader(showroom);
        text.lines().filter(Predicate.not(String::isBlank)).forEach(reader::read);
        return reader.end();
    }

    private static final class Reader {
        private final Showroom showroom;
        private Visit visit = Visit.NEW;
        private final List<String> aside = new ArrayList<>();
        private int lostAnswers;
        private int lostUnits;

        Reader(Showroom showroom) {
            this.showroom = showroom;
        }

        void read(String line) {
            List<String> words = Arrays.asList(line.split(" ", -1));
            String id = words.size() > 1 ? words.get(1) : "";
            List<String> said = words.subList(Math.min(2, words.size()), words.size());
            try {
                switch (words.get(0)) {
                    case ANSWER, AMOUNT, NOT_SURE -> readAnswer(words.get(0), new QuestionId(id), said);
                    case BELIEF, SURE -> readBelief(words.get(0).equals(SURE), new QuestionId(id), said);
                    case PIN -> readPin(new UnitId(id));
                    case ASIDE -> aside.add(id);
                    case STRUCK -> readStruck(id);
                    default -> lostAnswers++;
                }
            } catch (IllegalArgumentException e) {
                // Written by another version of this program.
                lostAnswers++;
            }
        }

        private void readAnswer(String kind, QuestionId id, List<String> said) {
            Optional<Answer> answer = showroom.questionnaire().find(id).flatMap(known -> switch (kind) {
                case AMOUNT -> amount(known, said);
                case ANSWER -> chosen(known, said);
                default -> Optional.<Answer>of(new Answer.NotSure());
            });
            answer.ifPresentOrElse(known -> visit = visit.answered(id, known), () -> lostAnswers++);
        }

        private static Optional<Answer> amount(Question question, List<String> said) {
            if (said.size() < 2) {
                return Optional.empty();
            }
            Amount amount = new Amount(
                    Dimension.valueOf(said.get(0)), Double.parseDouble(said.get(1)));
            return question.scale()
                    .filter(scale -> scale.dimension() == amount.dimension()
                            && scale.from().si() <= amount.si() && amount.si() <= scale.to().si())
                    .map(scale -> new Answer.Measured(amount));
        }

        /** Options that are still there; where one has to be picked and it is gone, or all are, there is no answer. */
        private Optional<Answer> chosen(Question question, List<String> said) {
            List<OptionId> known = said.stream()
                    .map(OptionId::new)
                    .filter(option -> question.findOption(option).isPresent())
                    .toList();
            boolean fits = switch (question.choose()) {
                case ONE -> known.size() == 1;
                case SEVERAL, JOBS -> !known.isEmpty() || said.isEmpty();
                case AMOUNT -> false;
            };
            if (fits && known.size() < said.size()) {
                lostAnswers++;
            }
            return fits ? Optional.of(new Answer.Chosen(known)) : Optional.empty();
        }

        private void readBelief(boolean sure, QuestionId id, List<String> said) {
            Optional<OptionId> option = said.stream()
                    .filter(Predicate.not(String::isEmpty))
                    .findFirst()
                    .map(OptionId::new);
            boolean known = showroom.quiz().questions().stream()
                    .anyMatch(question -> question.id().equals(id)
                            && option.map(picked -> question.options().contains(picked)).orElse(true));
            if (known) {
                visit = visit.believed(id, new Belief(option, sure));
            } else {
                lostAnswers++;
            }
        }

        private void readPin(UnitId id) {
            if (showroom.units().stream().map(Unit::id).anyMatch(id::equals)) {
                visit = visit.togglePin(id);
            } else {
                lostUnits++;
            }
        }

        /** What is set aside or struck out is an id of something asked or listed; what is no longer, needs no word. */
        private void readStruck(String id) {
            if (showroom.composer().templates().stream().anyMatch(line -> line.id().equals(id))) {
                visit = visit.toggleLine(id);
            }
        }

        Remembered end() {
            showroom.questionnaire().needs(visit.answers()).requirements().stream()
                    .filter(must -> aside.contains(must.id()))
                    .forEach(must -> visit = visit.toggleAside(must.id()));
            return new Remembered(visit, lostAnswers, lostUnits);
        }
    }
}
