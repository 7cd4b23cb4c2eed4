package fencerow.match;

import static fencerow.match.Yard.atLeast;
import static fencerow.match.Yard.gives;
import static fencerow.match.Yard.metres;
import static fencerow.match.Yard.must;
import static fencerow.match.Yard.needs;
import static fencerow.match.Yard.takes;
import static fencerow.match.Yard.unit;
import static fencerow.match.Yard.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.ItemId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which wishes are met as a unit stands, which its plan meets too, and which are not. */
class WishesTest {
    private static final Requirement WIDE =
            wish(atLeast("field-width", new Amount(Dimension.LENGTH, 1.8), Yard.PARKED));

    private static Yard cutterYard() {
        return new Yard()
                .feature("rear-pto")
                .best("field-width", Dimension.LENGTH)
                .attachment("cutter-6", 2400, "mow-field", Yard.PARKED,
                        List.of(metres("field-width", 1.8)), List.of(needs("rear-pto")))
                .addOn("shaft", 800, List.of(gives("rear-pto")), List.of());
    }

    private static List<String> planned(Match match) {
        return match.findPlan().orElseThrow().lines().stream().map(line -> line.item().value()).toList();
    }

    @Test
    void wishThatComesWithTheUnitIsMetSoFarAsItWorksOnIt() {
        Match works = cutterYard().matcher().match(unit().fitted("rear-pto").bundled("cutter-6").make(), needs(WIDE));
        Match idle = cutterYard().matcher().match(unit().bundled("cutter-6").make(), needs(WIDE));

        assertEquals(List.of(WIDE), works.score().met());
        assertEquals(100, works.score().percent());
        assertEquals(List.of(WIDE), idle.score().unmet());
    }

    @Test
    void wishThatThePlanMeetsTooIsToldApart() {
        Match match = cutterYard().matcher()
                .match(unit().make(), needs(must(needs("does:mow-field")), WIDE));

        assertEquals(List.of("cutter-6", "shaft"), planned(match));
        assertEquals(List.of(WIDE), match.score().planned());
        assertEquals(List.of(), match.score().unmet());
    }

    private static Needs ofWhoHasTheCutter() {
        return new Needs(
                List.of(must(needs("rear-pto")), WIDE),
                Set.of(new ItemId("cutter-6")),
                Set.of(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    @Test
    void whatTheShopperHasIsMetOnceThePlanMakesItWork() {
        Needs owned = ofWhoHasTheCutter();

        Match match = cutterYard().matcher().match(unit().make(), owned);

        assertEquals(List.of("shaft"), planned(match));
        assertEquals(List.of(WIDE), match.score().planned());
    }

    /** Each has its place at the block; there is one, and the kit that brings the shaft takes it. */
    @Test
    void whatThePlanTakesAwayFromWhatTheShopperHasKeepsItFromMeetingAWish() {
        Yard yard = new Yard()
                .shared("port-block")
                .feature("rear-pto")
                .best("field-width", Dimension.LENGTH)
                .attachment("cutter-6", 2400, "mow-field", Yard.PARKED, List.of(metres("field-width", 1.8)),
                        List.of(needs("rear-pto"), needs("port-block")))
                .addOn("shaft", 800, List.of(gives("rear-pto"), takes("port-block")), List.of());
        Needs owned = ofWhoHasTheCutter();

        Match match = yard.matcher().match(unit().make(), owned);

        assertEquals(List.of("shaft"), planned(match));
        assertEquals(List.of(WIDE), match.score().unmet());
        assertEquals(List.of(), match.score().planned());
    }

    @Test
    void wishUncheckedEquipmentMightMeetCountsAsNotMet() {
        Yard yard = new Yard().feature("canopy").feature("lights");

        Match match = yard.matcher().match(unit().unverified("canopy").fitted("lights").make(),
                needs(wish(needs("canopy")), wish(needs("lights"))));

        assertEquals(50, match.score().percent());
        assertEquals(List.of(), match.verify());
    }
}
