package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Place;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import fencerow.terms.TopicId;
import fencerow.visit.Visit;
import org.junit.jupiter.api.Test;

/** Another language or other units by one touch: the screen says the same another way, the visit stays. */
class LanguageFxTest {
    private static final Amount METER = new Amount(Dimension.LENGTH, 1);

    @Test
    void oneTouchSwapsTheLanguageInPlaceAndKeepsTheVisit() {
        Fx.on(() -> {
            Shown shown = Shown.of(Rooms.premises(), 1920, 1080);
            Visit visit = MatchPlaces.longDrive();
            shown.frame().change(fresh -> visit);
            shown.frame().go(Place.Topic.of(new TopicId("quick-attach")));
            shown.layOut();
            shown.touch("Espa\u00f1ol");
            shown.layOut();

            assertEquals("es", shown.frame().texts().language());
            assertEquals(visit, shown.frame().visit().get());
            assertTrue(shown.frame().here() instanceof Place.Topic topic
                    && topic.topic().equals(new TopicId("quick-attach")), () -> "at " + shown.frame().here());
            assertEquals("Enganche r\u00e1pido", shown.frame().library().find(new TopicId("quick-attach"))
                    .orElseThrow().title());
            assertEquals("$18,000", shown.frame().phrases().money(Money.ofDollars(18_000)));

            shown.frame().startOver(new Place.Home());
            assertEquals("en", shown.frame().texts().language(), "the next shopper starts in the first language");
            shown.frame().leave();
            return true;
        });
    }

    @Test
    void oneTouchSwapsTheUnits() {
        Fx.on(() -> {
            Shown shown = Shown.of(Rooms.premises(), 1920, 1080);
            shown.frame().go(new Place.Home());
            shown.layOut();
            String before = shown.frame().phrases().amount(METER);
            shown.touch(shown.frame().say("strip.units-us"));
            assertTrue(shown.frame().comfort().metric());
            assertTrue(shown.frame().phrases().amount(METER).endsWith("m"), before);
            shown.layOut();
            shown.touch(shown.frame().say("strip.units-metric"));
            assertEquals(before, shown.frame().phrases().amount(METER));
            shown.frame().leave();
            return true;
        });
    }
}
