package fencerow.kiosk.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.kiosk.find.FindModel.Filter;
import fencerow.kiosk.find.FindModel.Found;
import fencerow.kiosk.find.FindModel.Narrowed;
import fencerow.kiosk.find.FindModel.TagChip;
import fencerow.kiosk.frame.Premises;
import fencerow.search.Kind;
import fencerow.search.Tag;
import fencerow.terms.Stop;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FindInteractorTest {
    private static final FindInteractor FIND = interactor(Rooms.premises());

    private static FindInteractor interactor(Premises premises) {
        var texts = premises.texts().get("en");
        var phrases = new Phrases(texts, new Quantities(texts.locale(), false)::show);
        return new FindInteractor(
                premises.libraries().get("en"), premises.showroom(), phrases, premises.search());
    }

    private static Found found(String typed) {
        return FIND.found(typed, Narrowed.NOT, Visit.NEW);
    }

    @Test
    void threeLettersBringCardsKindsAndCompletions() {
        Found found = found("buc");
        assertFalse(found.cards().isEmpty());
        assertTrue(found.kinds().get(0).chosen());
        assertTrue(found.completions().stream().anyMatch(words -> words.startsWith("Buc")), found.toString());
        assertTrue(found.note().isEmpty());
    }

    @Test
    void aKindNarrowsTheCardsAndKeepsTheCountsOfAll() {
        Found all = found("bucket");
        Found words = FIND.found("bucket", Narrowed.NOT.to(Optional.of(Kind.WORD)), Visit.NEW);
        assertTrue(words.cards().stream().allMatch(card -> card.target().kind() == Kind.WORD));
        assertEquals(all.kinds().size(), words.kinds().size());
        assertTrue(words.kinds().stream()
                .anyMatch(chip -> chip.chosen() && chip.kind().equals(Optional.of(Kind.WORD))));
    }

    @Test
    void aKindThatIsNotThereAnyMoreGivesWayToAll() {
        Found found = FIND.found("warranty", Narrowed.NOT.to(Optional.of(Kind.ATTACHMENT)), Visit.NEW);
        assertFalse(found.cards().isEmpty());
    }

    @Test
    void aPartAndASizeNarrowTheCardsAndEachTellsHowManyItLeaves() {
        Found all = found("bucket");
        for (Filter filter : all.filters()) {
            for (TagChip chip : filter.chips()) {
                if (chip.tag().isPresent()) {
                    Narrowed one = Narrowed.NOT.to(filter.of(), chip.tag());
                    Found narrow = FIND.found("bucket", one, Visit.NEW);
                    assertTrue(narrow.kinds().isEmpty() || chip.words().endsWith(
                            narrow.kinds().get(0).words().replaceFirst("[^(]*", "")), chip + " but " + narrow.kinds());
                    assertTrue(narrow.filters().stream().filter(each -> each.of() == filter.of())
                            .findFirst().orElseThrow().isChosen(), chip.words());
                }
            }
        }
        assertEquals(List.of(Tag.Of.STOP, Tag.Of.MACHINE_CLASS),
                all.filters().stream().map(Filter::of).toList());
    }

    @Test
    void aPartChosenForOtherWordsGivesWayToAll() {
        Narrowed tires = Narrowed.NOT.to(Tag.Of.STOP, Optional.of(Tag.stop(Stop.TIRES)));
        Found found = FIND.found("warranty", tires, Visit.NEW);
        assertFalse(found.deadEnd());
        assertTrue(found.filters().stream().noneMatch(Filter::isChosen));
    }

    @Test
    void equipmentAndPriceAreReadAsAFilterOfTheStockAndSaid() {
        Found found = found("cab under 30000");
        assertTrue(found.understood().orElse("").contains("$30,000"), found.toString());
        assertEquals(Kind.UNIT, found.cards().get(0).target().kind());
    }

    @Test
    void nothingFoundIsNoDeadEnd() {
        Found found = found("qqqqq");
        assertTrue(found.deadEnd());
        assertFalse(found.cards().isEmpty());
        assertTrue(found.note().orElse("").contains("qqqqq"));
    }

    @Test
    void nothingTypedAsksForWordsAndOffersAllThereIsToRead() {
        assertTrue(found(" ").note().isPresent());
        assertEquals(
                Rooms.premises().libraries().get("en").explainers().stream()
                        .map(each -> each.topic().value()).collect(Collectors.toSet()),
                found("").cards().stream().map(card -> card.target().id()).collect(Collectors.toSet()));
    }
}
