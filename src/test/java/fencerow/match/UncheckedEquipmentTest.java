package fencerow.match;

import static fencerow.match.Yard.atMost;
import static fencerow.match.Yard.gives;
import static fencerow.match.Yard.metres;
import static fencerow.match.Yard.must;
import static fencerow.match.Yard.needs;
import static fencerow.match.Yard.takes;
import static fencerow.match.Yard.unit;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Requirement;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Machines about which little is known. */
class UncheckedEquipmentTest {
    @Test
    void whatNobodyCheckedNeverBreaksTheMachinesOwnLimits() {
        Yard yard = new Yard()
                .shared("port-block")
                .feature("power-beyond", takes("port-block"))
                .feature("steering-pump", takes("port-block"))
                .feature("loader")
                .addOn("third-function-kit", 900, List.of(gives("third-function"), takes("port-block")), List.of());
        Requirement thirdFunction = must(needs("third-function"));
        Requirement loader = must(needs("loader"));

        Match match = yard.matcher().match(
                unit().fitted("loader").unverified("power-beyond").unverified("steering-pump").make(),
                needs(thirdFunction, loader));

        assertEquals(Verdict.LOOK_CLOSER, match.verdict());
        assertEquals(1, match.score().mustsMet());
        assertEquals(List.of(thirdFunction), ((Finding.Infeasible) match.finding()).irreducible());
    }

    @Test
    void onlyThePiecesThatDecideAreNamedHoweverManyAreUnchecked() {
        Yard yard = new Yard().feature("cab", metres("height", 0.1));
        Yard.UnitMaker unit = unit().figure(Figure.HEIGHT, 2).unverified("cab");
        for (int i = 1; i <= 7; i++) {
            yard.feature("lamp-" + i, metres("height", 0.1), gives("light"));
            unit.unverified("lamp-" + i);
        }

        Match match = yard.sum("light", Dimension.COUNT).matcher().match(unit.make(), needs(
                must(needs("cab")),
                must(atMost("height", new Amount(Dimension.LENGTH, 3), Yard.PARKED)),
                Yard.wish(needs("light"))));

        assertEquals(Verdict.LOOK_CLOSER, match.verdict());
        assertEquals(
                List.of(new FeatureId("cab")),
                match.verify().stream().filter(Verify::flips).map(Verify::feature).toList());
    }
}
