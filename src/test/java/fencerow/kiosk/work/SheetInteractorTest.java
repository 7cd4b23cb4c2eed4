package fencerow.kiosk.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.kiosk.kit.Sign;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.sizing.catalogue.Choice;
import fencerow.sizing.catalogue.Inputs;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Parameter;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Figure;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.QuestionId;
import fencerow.visit.Showroom;
import fencerow.visit.Worksheet;
import fencerow.wording.SizingWords;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SheetInteractorTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();
    private static final Model MODEL = SHOWROOM.units().get(0).model();
    private static final Answers HEAVIEST = Answers.NONE.with(
            new QuestionId("heaviest-lift"), new Answer.Measured(Mass.ofPounds(1200).amount()));

    private static Worksheet sheet(String id) {
        return SHOWROOM.workbook().find(id).orElseThrow();
    }

    private static SheetInteractor on(String id, Answers answers, Optional<Model> model, boolean metric) {
        return new SheetInteractor(sheet(id), sheet(id).fill(answers, model),
                SizingWords.of(Rooms.premises().texts().get("en"), metric));
    }

    private static SheetInteractor on(String id) {
        return on(id, Answers.NONE, Optional.empty(), false);
    }

    @Test
    void everyCalculationAnswersOrNamesWhatItFindsBeforeAnythingIsTouched() {
        for (Worksheet each : SHOWROOM.workbook().sheets()) {
            SheetModel.Answer answer = on(each.id()).shown(Inputs.NONE).answer();
            assertEquals(Optional.empty(), answer.refused(), each.id());
            assertFalse(answer.amount().isEmpty() && answer.says().isEmpty(), each.id());
            assertFalse(answer.cautions().isEmpty(), each.id());
        }
    }

    /** Findings, limits, warnings and cautions of all options and of both ends of every number have their words. */
    @Test
    void everyOptionAndBothEndsOfEveryNumberCanBeSaid() {
        for (Worksheet each : SHOWROOM.workbook().sheets()) {
            SheetInteractor interactor = on(each.id());
            for (Parameter parameter : each.calculation().parameters()) {
                if (parameter instanceof Choice<?> choice) {
                    choice.options().keySet().forEach(option ->
                            interactor.shown(Inputs.NONE.choosing(choice.id(), option)));
                } else if (parameter instanceof Measured<?> measured) {
                    for (var end : List.of(measured.bounds().min(), measured.bounds().max())) {
                        interactor.shown(Inputs.NONE.with(measured.id(), end.amount()));
                    }
                }
            }
        }
    }

    @Test
    void anAnswerAlreadyGivenIsFilledInAndSaidToBeFromTheAnswers() {
        SheetModel.Value load = on("loader-lift", HEAVIEST, Optional.empty(), false)
                .shown(Inputs.NONE).values().get("load");
        assertEquals("1,200\u00a0lb", load.words());
        assertEquals("from your answers", load.note());
    }

    @Test
    void aUnitsFiguresAreFilledInAndTheShoppersOwnGoBeforeThem() {
        SheetInteractor interactor = on("loader-lift", Answers.NONE, Optional.of(MODEL), false);
        Amount pins = MODEL.findFigure(Figure.LOADER_LIFT_PINS).orElseThrow();
        SheetModel.Value filled = interactor.shown(Inputs.NONE).values().get("lift-at-pins");
        assertEquals("from this tractor", filled.note());
        Inputs more = interactor.moved(Inputs.NONE, "lift-at-pins", 1);
        assertTrue(more.numbers().get("lift-at-pins").low().si() > pins.si());
        assertEquals("yours", interactor.shown(more).values().get("lift-at-pins").note());
    }

    @Test
    void steppingStaysWithinWhatIsAllowedAndSaysSoAtTheEnd() {
        SheetInteractor door = on("door");
        Inputs given = Inputs.NONE;
        for (int i = 0; i < 600; i++) {
            given = door.moved(given, "door-height", 5);
        }
        SheetModel.Value most = door.shown(given).values().get("door-height");
        assertFalse(most.canMore());
        assertTrue(most.canLess());
        assertTrue(most.note().contains(most.words()), most.note());
    }

    @Test
    void stepsAreRoundInTheUnitsTheShopperReads() {
        Inputs us = on("loader-lift").moved(Inputs.NONE, "lift-at-pins", 1);
        assertEquals(2050, us.numbers().get("lift-at-pins").low().si() / 0.45359237, 1e-9);
        Inputs metric = on("loader-lift", Answers.NONE, Optional.empty(), true)
                .moved(Inputs.NONE, "lift-at-pins", 1);
        assertEquals(920, metric.numbers().get("lift-at-pins").low().si(), 1e-9);
    }

    @Test
    void numbersThatContradictEachOtherAreRefusedWithWhatIsAllowed() {
        SheetModel.Answer answer = on("loader-lift").shown(Inputs.NONE
                .with("lift-at-pins", Mass.ofPounds(500)).with("lift-at-rated-distance", Mass.ofPounds(900))).answer();
        String refused = answer.refused().orElseThrow();
        assertTrue(refused.contains("900\u00a0lb") && refused.contains("500\u00a0lb"), refused);
        assertFalse(answer.cautions().isEmpty());
    }

    /** From memory: doubling the distance from the pivot at least does not raise what a lever lifts. */
    @Test
    void theCurveOfLiftFallsAndMarksWhichLoadsItCanLift() {
        SheetInteractor interactor = on("loader-lift", HEAVIEST, Optional.empty(), false);
        Picture.Curve curve = (Picture.Curve) interactor.shown(Inputs.NONE).answer().picture().orElseThrow();
        for (int i = 1; i < curve.points().size(); i++) {
            assertTrue(curve.points().get(i).high() <= curve.points().get(i - 1).high() + 1e-12);
        }
        assertEquals(6, curve.loads().size()); // five usual ones and the shopper's
        assertEquals(Sign.Kind.NEVER, curve.loads().get(0).sign()); // a pallet of sod
        assertEquals(Sign.Kind.YES, curve.loads().get(2).sign()); // a small bale
        assertTrue(curve.alternative().contains("Your load"), curve.alternative());
    }

    @Test
    void axleBarsShowTheHeavierAxleLongestAndWhatEachMustKeep() {
        Picture.Axles axles = (Picture.Axles) on("axle-loads")
                .shown(Inputs.NONE.with("front-load", Mass.ofPounds(1500))).answer().picture().orElseThrow();
        assertEquals(1, axles.front().share(), 1e-12);
        assertTrue(axles.rear().share() < 1);
        assertTrue(axles.front().least().orElseThrow() < axles.rear().least().orElseThrow()); // 20 % and 45 %
    }

    @Test
    void whyNamesFormulaNumbersBoundsAndSources() {
        SheetModel.Why why = on("rear-ballast").why(Inputs.NONE.with("ahead-of-front-axle", Length.ofInches(60)));
        assertTrue(why.how().contains("45 %"), why.how());
        assertTrue(why.used().stream().anyMatch(line -> line.amount().equals("60\u00a0in")), why.used().toString());
        assertFalse(why.sources().isEmpty());
        assertEquals(sheet("rear-ballast").calculation().parameters().size(), why.allowed().size());
    }
}
