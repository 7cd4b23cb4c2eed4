package fencerow.kiosk.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.terms.TopicId;
import fencerow.visit.Worksheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From an explainer to its calculations, and from a calculation to its explainers. */
class LinksFxTest {
    private static final Premises PREMISES = Rooms.premises();
    private static final List<Worksheet> SHEETS = PREMISES.showroom().workbook().sheets();

    @Test
    void everyCalculationsExplainersAreThereAndLeadBackToIt() {
        for (Worksheet sheet : SHEETS) {
            for (TopicId topic : sheet.topics()) {
                PREMISES.libraries().forEach((language, library) ->
                        assertTrue(library.find(topic).isPresent(), sheet.id() + ": " + topic + " in " + language));
                assertTrue(PREMISES.showroom().workbook().about(topic).contains(sheet), sheet.id());
            }
        }
    }

    /** By touch, there and back, for the first calculation that shares its explainer and the first that does not. */
    @Test
    void aTouchLeadsFromExplainerToCalculationAndAnotherBack() {
        for (boolean alone : new boolean[] {true, false}) {
            Worksheet sheet = SHEETS.stream()
                    .filter(each -> each.topics().size() == 1 && isAlone(each) == alone)
                    .findFirst()
                    .orElseThrow();
            TopicId topic = sheet.topics().get(0);
            Fx.on(() -> {
                Shown shown = Shown.of(PREMISES, 1920, 1080);
                shown.frame().go(Place.Topic.of(topic));
                touch(shown, "topic.work-it-out");
                if (!alone) {
                    touch(shown, "work.calculation." + sheet.id() + ".ask");
                }
                assertEquals(Place.Worksheet.of(sheet.id()), shown.frame().here());
                touch(shown, "worksheet.what");
                assertEquals(Place.Topic.of(topic), shown.frame().here());
                shown.frame().leave();
                return true;
            });
        }
        assertFalse(SHEETS.isEmpty());
    }

    private static boolean isAlone(Worksheet sheet) {
        return PREMISES.showroom().workbook().about(sheet.topics().get(0)).equals(List.of(sheet));
    }

    private static void touch(Shown shown, String key) {
        shown.layOut();
        shown.touch(shown.frame().texts().get(key.startsWith("work.") ? key : "kiosk." + key));
    }
}
