package fencerow.kiosk.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.matching.Asked;
import fencerow.kiosk.matching.UnitCard;
import fencerow.match.Ranking;
import fencerow.match.WhatIf;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Completion;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.AnswerWords;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ResultsInteractorTest {
    private static final int VISITS = 12;
    private static final Showroom SHOWROOM = Rooms.premises().showroom();
    private static final Phrases PHRASES =
            new Phrases(Rooms.premises().texts().get("en"), new Quantities(Locale.US, false)::show);
    private static final ResultsInteractor RESULTS =
            new ResultsInteractor(SHOWROOM, new AnswerWords(PHRASES, false));

    private static Outlook outlook(Visit visit) {
        Ranking ranking = SHOWROOM.ranking(visit);
        return new Outlook(visit, SHOWROOM.needs(visit), ranking, SHOWROOM.stakes(visit, ranking));
    }

    private static Visit answered(Answers answers) {
        return new Visit(answers, Visit.NEW.beliefs(), List.of(), Set.of(), Set.of(), Optional.empty(),
                Money.ZERO);
    }

    private static Visit snow() {
        return Visit.NEW
                .answered(new QuestionId("jobs"), new Answer.Chosen(List.of(new OptionId("clear-snow"))))
                .answered(new QuestionId("snow-tool"), Answer.Chosen.of("front-blower"));
    }

    @Test
    void whereNothingIsReadyTheMustHaveWhoseLossFreesMostIsNamedAndTakingItAwayFreesThatMany() {
        int rescued = 0;
        for (long seed = 0; seed < VISITS; seed++) {
            Answers answers = new Completion(SHOWROOM.questionnaire(), new Random(seed)).complete(Answers.NONE);
            Outlook outlook = outlook(answered(answers));
            ResultsModel model = RESULTS.model(outlook, false);
            List<WhatIf.Change> changes = outlook.ranking().whatIf().changes();
            assertEquals(model.count() == 0 && !changes.isEmpty(), model.rescue().isPresent(), "seed " + seed);
            if (model.rescue().isPresent()) {
                rescued++;
                int most = changes.stream().map(change -> change.gained().size()).max(Comparator.naturalOrder())
                        .orElseThrow();
                Visit relaxed = outlook.visit().toggleAside(model.rescue().get().must());
                assertEquals(most, SHOWROOM.ranking(relaxed).ready().size(), "seed " + seed);
            }
        }
        assertTrue(rescued > 0, "no random visit came to nothing; the test looks at nothing");
    }

    @Test
    void whereNoSingleMustHaveWouldHelpTheAnswerMostInTheWayIsNamed() {
        QuestionId gate = new QuestionId("gate-width");
        Visit narrow = snow().answered(gate, new Answer.Measured(new Amount(Dimension.LENGTH, 0.9144)));
        ResultsModel model = RESULTS.model(outlook(narrow), false);
        assertEquals(0, model.count());
        assertEquals(Optional.empty(), model.rescue());
        assertTrue(ResultsInteractor.isStuck(model));
        ResultsModel.InTheWay answer = RESULTS.inTheWay(outlook(narrow)).orElseThrow();
        assertEquals(Optional.of(gate), answer.question());
        String words = answer.words().get(answer.words().size() - 1);
        assertTrue(words.contains("3 ft"), words);
        int freed = SHOWROOM.ranking(narrow.unanswered(gate)).ready().size();
        assertTrue(freed > 0 && words.contains(Integer.toString(freed)), words);
    }

    @Test
    void aMustHaveSetAsideStaysInSightAndCanBeAskedForAgain() {
        Asked before = RESULTS.model(outlook(snow()), false).asked();
        String must = before.musts().get(1).id();
        Asked aside = RESULTS.model(outlook(snow().toggleAside(must)), false).asked();
        assertEquals(before.musts().stream().map(Asked.Must::id).toList(),
                aside.musts().stream().map(Asked.Must::id).toList());
        assertEquals(List.of(must), aside.musts().stream().filter(each -> !each.counts()).map(Asked.Must::id).toList());
        assertEquals(before, RESULTS.model(outlook(snow().toggleAside(must).toggleAside(must)), false).asked());
    }

    @Test
    void everyCardSaysSomethingForAndAgainst() {
        for (UnitCard card : RESULTS.model(outlook(snow()), false).cards()) {
            assertFalse(card.speaksFor().isEmpty(), card.title());
            assertFalse(card.price().isBlank(), card.title());
        }
        List<UnitCard> cards = RESULTS.model(outlook(snow()), false).cards();
        assertTrue(cards.stream().skip(1).noneMatch(card -> card.speaksAgainst().isEmpty()),
                "all but the first have something against them");
    }

    @Test
    void everyUnitIsShownOnceWhenAllAreWanted() {
        Outlook outlook = outlook(snow());
        ResultsModel all = RESULTS.model(outlook, true);
        long shown = all.cards().size()
                + all.groups().stream().mapToLong(group -> group.lines().size()).sum();
        assertEquals(SHOWROOM.units().size(), shown);
        assertEquals(0, all.more());
    }
}
