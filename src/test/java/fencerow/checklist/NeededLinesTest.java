package fencerow.checklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.needs.Answer;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Must-haves that are numbers mark the lines that check them, as those that are equipment do. */
class NeededLinesTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();

    private static Visit choose(Visit visit, String question, String... options) {
        return visit.answered(new QuestionId(question),
                new Answer.Chosen(Arrays.stream(options).map(OptionId::new).toList()));
    }

    private static Visit measure(Visit visit, String question, Dimension dimension, double si) {
        return visit.answered(new QuestionId(question), new Answer.Measured(new Amount(dimension, si)));
    }

    private static List<ChecklistLine> list(Visit visit) {
        return SHOWROOM.checklist(visit, SHOWROOM.stakes(visit, SHOWROOM.ranking(visit)));
    }

    private static Set<String> needed(Visit visit) {
        return list(visit).stream()
                .filter(line -> line.because().stream()
                        .anyMatch(why -> why instanceof Because.YourWork work && work.requirement().must()))
                .map(ChecklistLine::id)
                .collect(Collectors.toSet());
    }

    @Test
    void heightUnderADoorMarksTheLineThatMeasuresIt() {
        assertTrue(needed(measure(Visit.NEW, "door-height", Dimension.LENGTH, 2.1336)).contains("height-measured"));
        assertFalse(needed(Visit.NEW).contains("height-measured"));
    }

    @Test
    void widthThroughAGateBringsItsLineWithTheShoppersNumber() {
        assertFalse(list(Visit.NEW).stream().anyMatch(line -> line.id().equals("wheels-apart-measured")));
        Visit gate = measure(Visit.NEW, "gate-width", Dimension.LENGTH, 2.4384);
        assertTrue(needed(gate).contains("wheels-apart-measured"));
        ChecklistLine line = list(gate).stream()
                .filter(each -> each.id().equals("wheels-apart-measured"))
                .findFirst()
                .orElseThrow();
        // 8 ft less the 4 in that the questionnaire keeps free.
        assertEquals(2.4384 - 0.1016, line.number().orElseThrow().amount().high().si(), 1e-3);
    }

    @Test
    void weightOnATrailerMarksTheLineOfTheHaul() {
        assertTrue(needed(measure(Visit.NEW, "trailer-capacity", Dimension.MASS, 2268)).contains("haul-limits"));
    }

    @Test
    void aToolsPowerMarksTheShaftAndALoadInFrontTheLiftAndTheWeightBehind() {
        Visit snow = choose(choose(Visit.NEW, "jobs", "clear-snow"), "snow-tool", "rear-blower");
        assertTrue(needed(snow).contains("pto-shield"), () -> needed(snow).toString());
        Visit pallets = measure(choose(Visit.NEW, "jobs", "move-pallets"), "heaviest-lift", Dimension.MASS, 500);
        assertTrue(needed(pallets).containsAll(Set.of("loader-lift-point", "rear-weight-in-price")),
                () -> needed(pallets).toString());
    }
}
