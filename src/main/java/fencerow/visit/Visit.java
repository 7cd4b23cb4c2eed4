package fencerow.visit;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.quiz.Belief;
import fencerow.quiz.Beliefs;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One shopper's stay: everything answered and chosen so far. Nothing in it identifies anyone, and when it ends it is
 * forgotten.
 *
 * @param answers     about the work
 * @param beliefs     from the quiz
 * @param pinned      units to look at side by side, at most three, in the order pinned
 * @param setAside    ids of must-haves set aside to see what would change
 * @param leftOut     ids of checklist lines the shopper struck out
 * @param secondQuote another seller's tractor, as the shopper told of it
 * @param tradeOffer  what is offered here for the shopper's own tractor; nothing where there is none
 * @param code        brings the visit back as it is now; gone as soon as anything else changes
 */
public record Visit(
        Answers answers,
        Beliefs beliefs,
        List<UnitId> pinned,
        Set<String> setAside,
        Set<String> leftOut,
        Optional<Unit> secondQuote,
        Money tradeOffer,
        Optional<ReturnCode> code) {
    /** The most units side by side. */
    public static final int MOST_PINNED = 3;

    /** A shopper who has just walked up. */
    public static final Visit NEW = new Visit(
            Answers.NONE, Beliefs.NONE, List.of(), Set.of(), Set.of(), Optional.empty(), Money.ZERO);

    /** Copies the collections. */
    public Visit {
        pinned = List.copyOf(pinned);
        setAside = Set.copyOf(setAside);
        leftOut = Set.copyOf(leftOut);
    }

    /** A visit without a code. */
    public Visit(Answers answers, Beliefs beliefs, List<UnitId> pinned, Set<String> setAside, Set<String> leftOut,
            Optional<Unit> secondQuote, Money tradeOffer) {
        this(answers, beliefs, pinned, setAside, leftOut, secondQuote, tradeOffer, Optional.empty());
    }

    /** With an answer given or changed; every other answer stays. */
    public Visit answered(QuestionId question, Answer answer) {
        return with(answers.with(question, answer));
    }

    /** With an answer taken back. */
    public Visit unanswered(QuestionId question) {
        return with(answers.without(question));
    }

    private Visit with(Answers next) {
        return new Visit(next, beliefs, pinned, setAside, leftOut, secondQuote, tradeOffer);
    }

    /** With a quiz answer given or changed. */
    public Visit believed(QuestionId question, Belief belief) {
        return new Visit(answers, beliefs.with(question, belief), pinned, setAside, leftOut, secondQuote, tradeOffer);
    }

    /** With the unit pinned, or no longer so; the oldest pin makes room for a fourth. */
    public Visit togglePin(UnitId unit) {
        List<UnitId> next = new ArrayList<>(pinned);
        if (!next.remove(unit)) {
            next.add(unit);
            if (next.size() > MOST_PINNED) {
                next.remove(0);
            }
        }
        return new Visit(answers, beliefs, next, setAside, leftOut, secondQuote, tradeOffer);
    }

    /** With the must-have set aside, or asked for again. */
    public Visit toggleAside(String requirement) {
        return new Visit(answers, beliefs, pinned, toggled(setAside, requirement), leftOut, secondQuote, tradeOffer);
    }

    /** With the line struck from the list, or back on it. */
    public Visit toggleLine(String line) {
        return new Visit(answers, beliefs, pinned, setAside, toggled(leftOut, line), secondQuote, tradeOffer);
    }

    /** With another seller's tractor beside the ones here. */
    public Visit told(Optional<Unit> quote) {
        return new Visit(answers, beliefs, pinned, setAside, leftOut, quote, tradeOffer);
    }

    /** With so much offered here for the shopper's own tractor. */
    public Visit offered(Money trade) {
        return new Visit(answers, beliefs, pinned, setAside, leftOut, secondQuote, trade);
    }

    /** With a code that brings it back. */
    public Visit kept(ReturnCode under) {
        return new Visit(answers, beliefs, pinned, setAside, leftOut, secondQuote, tradeOffer, Optional.of(under));
    }

    private static Set<String> toggled(Set<String> set, String element) {
        Set<String> next = new HashSet<>(set);
        if (!next.remove(element)) {
            next.add(element);
        }
        return next;
    }
}
