package fencerow.kiosk.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Counter;
import fencerow.desk.Counts;
import fencerow.desk.Tally;
import fencerow.kiosk.Fx;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.kit.Touch;
import fencerow.search.Tag;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import fencerow.terms.UnitId;
import fencerow.visit.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;

/** From any screen to the search in one touch, typing, and back to where one was. */
class FindFxTest {
    private static void at(Place place, Consumer<Shown> look) {
        Fx.on(() -> {
            Shown shown = Shown.of(Rooms.premises(), 1920, 1080);
            shown.frame().go(new Place.Home());
            shown.frame().go(place);
            shown.layOut();
            try {
                look.accept(shown);
            } finally {
                shown.frame().leave();
            }
            return true;
        });
    }

    private static void type(Shown shown, String letters) {
        letters.codePoints().mapToObj(Character::toString).forEach(shown::touch);
    }

    private static String query(Shown shown) {
        return ((Label) shown.scene().lookup(".field-words")).getText();
    }

    @Test
    void everyExplainerIsTwoTouchesFromAnywhereAndBackLeadsToWhereOneWas() {
        for (Place place : List.of(Place.Results.TOP, Place.UnitSheet.of(new UnitId("n-203")), Place.SideBySide.TOP,
                new Place.Guide(Visit.NEW, 0), Place.Questions.NEXT, Place.Quiz.NEXT)) {
            at(place, shown -> {
                shown.touch("Search");
                Set<String> offered = shown.touches().stream().map(Touch::getAccessibleText)
                        .collect(Collectors.toSet());
                shown.frame().library().explainers().forEach(each -> assertTrue(
                        offered.contains(each.title()), () -> each.title() + " is not offered to who types nothing"));
                shown.touch("Rear remotes");
                assertEquals(Place.Topic.of(new TopicId("rear-remotes")), shown.frame().here());
                shown.touch("Back");
                shown.touch("Back");
                assertEquals(place.key(), shown.frame().here().key());
            });
        }
    }

    @Test
    void theSearchIsOneTouchAwayAndLeadsBackToWhereOneWas() {
        at(Place.Topics.FIRST, shown -> {
            shown.touch("Search");
            type(shown, "rem");
            shown.layOut();
            String card = shown.touches().stream()
                    .filter(touch -> touch.getStyleClass().contains("topic"))
                    .findFirst()
                    .orElseThrow()
                    .getAccessibleText();
            assertTrue(card.toLowerCase(Locale.ROOT).contains("rem"), card);
            shown.touch("Close search");
            assertInstanceOf(Place.Topics.class, shown.frame().here());
        });
    }

    @Test
    void aCompletionIsTakenByATouchAndAnExplainerLeadsBackToTheWordsTyped() {
        at(Place.Find.EMPTY, shown -> {
            type(shown, "quick");
            shown.layOut();
            shown.touch("Quick-attach coupler");
            assertEquals("Quick-attach coupler", query(shown));
            List<String> cards = shown.touches().stream()
                    .filter(touch -> touch.getStyleClass().contains("topic"))
                    .map(touch -> touch.getAccessibleText())
                    .toList();
            shown.touch(cards.stream().filter(name -> name.startsWith("Quick-attach")).findFirst().orElseThrow());
            shown.touch("Back");
            assertEquals(new Place.Find("Quick-attach coupler", Optional.empty(), 0), shown.frame().here());
        });
    }

    @Test
    void aPartOfTheTractorIsChosenByATouchAndTakenOffByAnother() {
        at(Place.Find.EMPTY, shown -> {
            type(shown, "bucket");
            int all = cards(shown);
            shown.touch("By part or size");
            String loader = shown.touches().stream()
                    .map(Touch::getAccessibleText)
                    .filter(words -> words.startsWith("Loader ("))
                    .findFirst()
                    .orElseThrow();
            shown.touch(loader);
            assertEquals("Loader (" + cards(shown) + ")", loader);
            assertTrue(cards(shown) < all);
            shown.frame().go(Place.Topics.FIRST);
            shown.frame().back();
            assertEquals(new Place.Find("bucket", Optional.empty(), Set.of(Tag.stop(Stop.LOADER)), 0),
                    shown.frame().here());
            shown.layOut();
            shown.touch(loader);
            assertEquals(all, cards(shown));
        });
    }

    private static int cards(Shown shown) {
        shown.layOut();
        return (int) shown.touches().stream().filter(touch -> touch.getStyleClass().contains("topic")).count();
    }

    /** Words that found nothing are counted when one leaves, without a name or a number in them. */
    @Test
    void wordsThatFoundNothingGoToTheJournalButNoNamesAndNumbers() {
        List<Tally> kept = new ArrayList<>();
        Premises premises = keeping(kept::add);
        Fx.on(() -> {
            Shown shown = Shown.of(premises, 1920, 1080);
            shown.frame().go(new Place.Home());
            shown.frame().go(Place.Find.EMPTY);
            shown.layOut();
            "cup holder 555-0142".codePoints().forEach(letter -> key(shown, Character.toString(letter)));
            shown.layOut();
            shown.touch("Close search");
            shown.frame().startOver(new Place.Home());
            shown.frame().leave();
            return true;
        });
        assertEquals(
                Map.of(Counter.of(Counter.Kind.NOT_FOUND, "cup holder"), 1L), kept.get(0).of(Counter.Kind.NOT_FOUND));
    }

    private static Premises keeping(Consumer<Tally> journal) {
        Premises room = Rooms.premises();
        return new Premises(room.showroom(), room.texts(), room.libraries(), room.settings(), room.search(),
                room.printer(), room.contentVersion(), room.problems(), new Kept(journal), room.comeBack());
    }

    @Test
    void aKeyboardThatIsPluggedInTypesToo() {
        at(Place.Find.EMPTY, shown -> {
            key(shown, "c");
            key(shown, "a");
            key(shown, "x");
            key(shown, "\b");
            key(shown, "b");
            assertEquals("cab", query(shown));
        });
    }

    private static void key(Shown shown, String character) {
        shown.scene().getFocusOwner().fireEvent(new KeyEvent(
                KeyEvent.KEY_TYPED, character, "", KeyCode.UNDEFINED, false, false, false, false));
    }

    /** Takes what a visit came to, and has nothing to show. */
    private record Kept(Consumer<Tally> journal) implements Counts {
        @Override
        public void ended(Tally visit) {
            journal.accept(visit);
        }

        @Override
        public Tally sum(LocalDate from, LocalDate to) {
            return Tally.NONE;
        }

        @Override
        public LocalDate today() {
            return LocalDate.EPOCH;
        }
    }
}
