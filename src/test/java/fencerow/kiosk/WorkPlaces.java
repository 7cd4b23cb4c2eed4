package fencerow.kiosk;

import static fencerow.kiosk.WalkPlace.at;

import fencerow.kiosk.frame.Place;
import fencerow.sizing.catalogue.Inputs;
import fencerow.sizing.catalogue.Topic;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.UnitId;
import java.util.List;
import java.util.Optional;

/** The screens of the calculations in the states that the walk looks at. */
final class WorkPlaces {
    private WorkPlaces() {}

    static List<WalkPlace> all() {
        return List.of(
                at("work", Place.Work.FIRST),
                at("work-money", new Place.Work(Optional.of(Topic.MONEY), 0)),
                at("sheet-lift", Place.Worksheet.of("loader-lift")),
                at("sheet-payload-unit", Place.Worksheet.of("loader-payload", new UnitId("n-203"))),
                at("sheet-payload-all", new Place.Worksheet(
                        "loader-payload", Optional.of(new UnitId("n-203")), Inputs.NONE, true, 1)),
                at("sheet-ballast", Place.Worksheet.of("rear-ballast", new UnitId("n-203"))),
                at("sheet-value", Place.Worksheet.of("remaining-value")),
                at("sheet-refused", new Place.Worksheet("loader-lift", Optional.empty(),
                        Inputs.NONE.with("lift-at-pins", Mass.ofPounds(500))
                                .with("lift-at-rated-distance", Mass.ofPounds(900)), false, 0)),
                at("sheet-end", new Place.Worksheet("door", Optional.empty(),
                        Inputs.NONE.with("door-height", Length.ofFeet(30)), false, 0)),
                at("sheet-circuits", Place.Worksheet.of("circuits")),
                at("sheet-couplers", Place.Worksheet.of("couplers")),
                at("sheet-choices", Place.Worksheet.of("ballast-choices")),
                new WalkPlace("sheet-why", frame -> frame.go(Place.Worksheet.of("loader-payload")),
                        shown -> shown.touch(shown.frame().say("worksheet.why"))),
                new WalkPlace("sheet-what", frame -> frame.go(Place.Worksheet.of("loader-payload")),
                        shown -> shown.touch(shown.frame().say("worksheet.what"))));
    }
}
