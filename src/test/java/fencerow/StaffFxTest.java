package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Edit;
import fencerow.desk.Sale;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.kiosk.Fx;
import fencerow.kiosk.Rooms;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.FeatureId;
import fencerow.terms.Money;
import fencerow.terms.UnitId;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Staff change the stock at the screen, over the real database; each test has a unit of its own. */
class StaffFxTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
    private static final Place ATTRACT = new Place.Attract();

    @TempDir
    static Path folder;

    private static KioskWiring wiring = new KioskWiring(CLOCK, "", config -> config);
    private static Optional<Premises> opened = Optional.empty();

    @BeforeAll
    static void openTheKiosk() {
        DemoShowroom demo = DemoShowroom.in(folder);
        wiring = new KioskWiring(CLOCK, "", config -> demo.data());
        opened = Optional.of(assertInstanceOf(Opening.Open.class, wiring.open(demo.folders())).premises());
    }

    @AfterAll
    static void closeTheDatabase() {
        wiring.close();
    }

    private static Premises premises() {
        return opened.orElseThrow();
    }

    private static StockBook book() {
        return premises().desk().orElseThrow().book();
    }

    private static StockEntry entry(String unit) {
        return book().find(new UnitId(unit)).orElseThrow();
    }

    private static void at(Place place, Consumer<Shown> then) {
        Fx.on(() -> {
            Shown shown = Shown.of(premises(), 1920, 1080);
            try {
                shown.frame().go(place);
                type(shown, Rooms.PIN);
                shown.layOut();
                then.accept(shown);
            } finally {
                shown.frame().leave();
            }
            return true;
        });
    }

    private static void type(Shown shown, String pin) {
        pin.codePoints().mapToObj(Character::toString).forEach(shown::touch);
        shown.touch("Open");
    }

    /** The unit as the next visitor sees it; empty where it is not shown. */
    private static Optional<Unit> atTheNextVisit(Shown shown, String id) {
        wiring.findRestocked().ifPresent(newer -> {
            opened = Optional.of(newer);
            shown.frame().offer(newer);
        });
        shown.frame().startOver(new Place.Home());
        return shown.frame().premises().showroom().units().stream()
                .filter(unit -> unit.id().value().equals(id))
                .findFirst();
    }

    @Test
    void wrongPinsAreToldAndThenMakeStaffWaitEverLonger() {
        Fx.on(() -> {
            Shown shown = Shown.of(premises(), 1920, 1080);
            shown.frame().go(Place.StaffUnits.ALL);
            type(shown, "1111");
            shown.says("That is not the PIN. Try again.");
            type(shown, "2222");
            type(shown, "3333");
            shown.says("Wait 30 seconds");
            type(shown, Rooms.PIN);
            shown.says("Wait 30 seconds");
            shown.clock().pass(Duration.ofSeconds(31));
            type(shown, "4444");
            shown.says("Wait 60 seconds");
            shown.clock().pass(Duration.ofSeconds(61));
            type(shown, Rooms.PIN);
            assertEquals("staff-units", shown.frame().here().key(), "the door leads where staff were going");
            shown.says("For sale (");
            return true;
        });
    }

    @Test
    void aPriceIsTypedKeptWrittenDownAndLiveAtTheNextVisit() {
        at(Place.StaffUnit.of(new UnitId("n-202")), shown -> {
            shown.touchBeginning("Asking price: $17,900");
            for (int i = 0; i < 5; i++) {
                shown.touch("delete");
            }
            shown.touch("Keep it");
            shown.says("That cannot stand here, so it is not kept. Whole dollars. It must be filled in.");
            assertEquals(Optional.of("17900"), entry("n-202").row().find("asking"));
            List.of("1", "8", "4", "000").forEach(shown::touch);
            shown.touch("delete");
            shown.touch("Keep it");
            shown.says("$18,400");

            assertEquals(Money.ofDollars(17_900), shown.frame().premises().showroom().units().stream()
                    .filter(unit -> unit.id().value().equals("n-202")).findFirst().orElseThrow().price().asking(),
                    "nothing changes under who is here");
            assertEquals(Money.ofDollars(18_400), atTheNextVisit(shown, "n-202").orElseThrow().price().asking());
            Edit.Recorded newest = book().changes(1).get(0);
            assertEquals(List.of("asking", "17900", "18400", CLOCK.instant()),
                    List.of(newest.field(), newest.before(), newest.after(), newest.at()));
        });
        at(new Place.StaffChanges(0), shown -> shown.says("Asking price: $18,400. Before: $17,900."));
    }

    @Test
    void whatNobodyCheckedIsAnsweredByOneTouchAndCanBePutRight() {
        at(Place.StaffUnit.of(new UnitId("u-406")), shown -> {
            shown.touchBeginning("Verify ");
            shown.touchBeginning("Fitted: Block heater");
            assertEquals(Optional.of("yes"), entry("u-406").row().find("block-heater"));
            shown.touchBeginning("Not fitted: Block heater");
            assertEquals(Optional.of("no"), entry("u-406").row().find("block-heater"));
            assertEquals(Fact.absent(),
                    atTheNextVisit(shown, "u-406").orElseThrow().fact(new FeatureId("block-heater")));
        });
    }

    @Test
    void aUnitIsHeldReleasedAndSold() {
        at(Place.StaffUnit.of(new UnitId("n-205")), shown -> {
            shown.touch("Hold it");
            shown.touch("7 days");
            shown.says("Held until Mar 9, 2026");
            assertEquals(new Sale.Held(LocalDate.parse("2026-03-09")), entry("n-205").sale());
            shown.touch("Back for sale");
            shown.says("For sale");
            shown.touch("It is sold");
            shown.says("Sold on Mar 2, 2026");
            assertEquals(Optional.empty(), atTheNextVisit(shown, "n-205"));
        });
        at(new Place.StaffUnits(Place.StaffUnits.Which.SOLD, "", false, 0), shown -> shown.says("n-205. Sold on"));
    }

    @Test
    void aUnitIsAddedUnderAnIdOfItsOwn() {
        at(Place.StaffUnits.ALL, shown -> {
            shown.touch("Add a unit");
            List.of("n", "123 \u00e1\u00f1", "-", "2", "0", "1").forEach(shown::touch);
            shown.touch("Next");
            shown.says("There is a unit with this id already.");
            shown.touch("9");
            shown.touch("Next");
            shown.touchBeginning(firstModel());
            shown.touch("Next");
            List.of("2", "1", "000").forEach(shown::touch);
            shown.touch("Add it");
            assertEquals("staff-unit", shown.frame().here().key());
            assertEquals(Money.ofDollars(21_000), atTheNextVisit(shown, "n-2019").orElseThrow().price().asking());
        });
    }

    private static String firstModel() {
        return premises().showroom().catalogue().models().get(0).title();
    }

    @Test
    void aChangeThatSomebodyElseOvertookIsShownBesideTheirsAndNotLost() {
        at(Place.StaffUnit.of(new UnitId("n-207")), shown -> {
            book().edit(Edit.cell(entry("n-207"), "hours", "9"));
            shown.touchBeginning("Hours: 2");
            shown.touch("delete");
            shown.touch("5");
            shown.touch("Keep it");
            shown.says("Somebody else was quicker");
            shown.says("Hours, as it stands now");
            assertEquals(Optional.of("9"), entry("n-207").row().find("hours"));
            shown.touch("Keep mine");
            assertEquals(Optional.of("5"), entry("n-207").row().find("hours"));
        });
    }

    @Test
    void aFieldThatNeedsAnotherOneIsKeptTogetherWithIt() {
        at(Place.StaffUnit.of(new UnitId("n-209")), shown -> {
            shown.touchBeginning("Where it is: ");
            shown.touch("on its way");
            shown.says("This is needed too: Days until it is here.");
            assertEquals(Optional.of("in-stock"), entry("n-209").row().find("status"));
            shown.touch("8");
            shown.touch("Keep it");
            assertEquals(Optional.of("in-transit"), entry("n-209").row().find("status"));
            assertEquals(Optional.of("8"), entry("n-209").row().find("lead-days"));
        });
    }

    @Test
    void aUnitIsFoundByTyping() {
        at(Place.StaffUnits.ALL, shown -> {
            shown.touch("Look for a unit");
            List.of("u", "123 \u00e1\u00f1", "-", "4", "1", "8").forEach(shown::touch);
            shown.says("All (1)");
            shown.says("u-418");
        });
    }

    @Test
    void staffAreSignedOutWhenNobodyTouchesAndACountdownSaysSo() {
        at(Place.StaffUnits.ALL, shown -> {
            Duration wait = premises().settings().idle().signOut();
            shown.clock().pass(wait.minusSeconds(20));
            shown.frame().tick();
            shown.says("20 seconds left");
            shown.says("staff are signed out here");
            assertTrue(shown.frame().doors().lock().isOpen());
            shown.clock().pass(Duration.ofSeconds(21));
            shown.frame().tick();
            assertEquals(ATTRACT, shown.frame().here());
            shown.frame().go(Place.StaffUnits.ALL);
            shown.says("Type your PIN.");
        });
    }

    @Test
    void leavingTheStaffAreaOrStartingOverLocksTheDoor() {
        at(new Place.Staff(), shown -> {
            shown.touch("Start over");
            assertFalse(shown.frame().doors().lock().isOpen());
            shown.frame().go(new Place.Staff());
            type(shown, Rooms.PIN);
            shown.frame().go(Place.Topics.FIRST);
            shown.frame().back();
            shown.says("Type your PIN.");
        });
    }
}
