package fencerow.sizing.catalogue;

import fencerow.sizing.Caution;
import fencerow.sizing.CommercialLicense;
import fencerow.sizing.Limit;
import fencerow.sizing.Source;
import fencerow.sizing.TieDown;
import fencerow.sizing.TrailerHitch;
import fencerow.sizing.TrailerLoad;
import fencerow.sizing.Warning;
import fencerow.sizing.WorkingLoadLimit;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Getting the tractor home: trailer, tow vehicle, tie-downs. */
final class HaulingCalculations {
    private static final Measured<Mass> TRACTOR = mass("tractor", 3000);
    private static final Measured<Mass> LOADER = mass("loader", 900);
    private static final Measured<Mass> LIQUID = mass("liquid", 0);
    private static final Measured<Mass> TOOLS = mass("tools", 0);
    private static final Measured<Mass> TRAILER = mass("trailer", 2200);
    private static final Measured<Mass> TRAILER_RATING = mass("trailer-rating", 7000);
    /** Left out, the tow vehicle is not looked at. */
    private static final Measured<Mass> VEHICLE = optional("vehicle");
    private static final Measured<Mass> VEHICLE_RATING = optional("vehicle-rating");
    private static final Measured<Mass> COMBINED_RATING = optional("combined-rating");
    private static final Measured<Mass> HITCH_RATING = optional("hitch-rating");
    private static final Choice<Boolean> BUSINESS = Choice.yesNo("for-business", false);

    private static final Measured<Mass> LOAD = Measured.of(TieDown.LOAD, Mass::of, Mass.ofPounds(100))
            .preset(Mass.ofPounds(4000))
            .usual(Mass.ofPounds(500), Mass.ofPounds(15_000));
    private static final Measured<Length> LENGTH = Measured.of(TieDown.LENGTH, Length::of, Length.ofFeet(1))
            .preset(Length.ofFeet(12))
            .usual(Length.ofFeet(5), Length.ofFeet(25));
    private static final Choice<Boolean> BLOCKED = Choice.yesNo("blocked-in-front", false);
    private static final Choice<WorkingLoadLimit> KIND = Choice.of(
            "tie-down",
            WorkingLoadLimit.all(),
            WorkingLoadLimit::id,
            WorkingLoadLimit.find("chain-g70", "5/16").orElseThrow());
    private static final Choice<TieDown.Run> RUN =
            Choice.of("run", TieDown.Run.class, TieDown.Run::id, TieDown.Run.DIRECT);

    private static final Output ON_TRAILER = new Output("load-on-trailer", Dimension.MASS);
    private static final Output GROSS = new Output("gross", Dimension.MASS);
    private static final Output TONGUE = new Output("tongue", Dimension.MASS);
    private static final Output TRAILER_MARGIN = new Output("trailer-margin", Dimension.MASS);
    private static final Output VEHICLE_MARGIN = new Output("vehicle-margin", Dimension.MASS);
    private static final Output COMBINED_MARGIN = new Output("combined-margin", Dimension.MASS);
    private static final Output HITCH_MARGIN = new Output("hitch-margin", Dimension.MASS);
    private static final Output NUMBER = new Output("tie-downs", Dimension.COUNT);
    private static final Output HOLDS = new Output("holds", Dimension.MASS);

    private HaulingCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("trailer-load")
                        .asks(TRACTOR, LOADER, LIQUID, TOOLS, TRAILER, TRAILER_RATING)
                        .asks(VEHICLE, VEHICLE_RATING, COMBINED_RATING, HITCH_RATING, BUSINESS)
                        .gives(ON_TRAILER, GROSS, TONGUE)
                        .gives(TRAILER_MARGIN, VEHICLE_MARGIN, COMBINED_MARGIN, HITCH_MARGIN)
                        .from(Source.VEHICLE_HANDBOOKS, Source.TRAILER_HITCHES)
                        .beware(Caution.LOADING_ON_TRAILER)
                        .by(HaulingCalculations::trailer),
                named("tie-downs")
                        .asks(LOAD, LENGTH, BLOCKED, KIND, RUN)
                        .gives(NUMBER, HOLDS)
                        .from(Source.CARGO_SECUREMENT, Source.HEAVY_EQUIPMENT_SECUREMENT)
                        .beware(Caution.RECHECK_TIE_DOWNS)
                        .by(HaulingCalculations::tieDowns));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.HAULING).beware(Caution.ROAD_LAW, Caution.NOT_AN_APPROVAL);
    }

    private static Measured<Mass> mass(String id, double preset) {
        return optional(id).preset(Mass.ofPounds(preset));
    }

    private static Measured<Mass> optional(String id) {
        return Measured.of(TrailerLoad.MASS.as(id), Mass::of, Mass.ofPounds(100))
                .usual(Mass.ofPounds(0), Mass.ofPounds(30_000));
    }

    private static void trailer(Point in, Outcome out) {
        TrailerLoad load = TrailerLoad.of(
                in.get(TRAILER), in.get(TRACTOR), in.get(LOADER), in.get(LIQUID), in.get(TOOLS));
        out.put(ON_TRAILER, load.load()).put(GROSS, load.gross()).put(TONGUE, load.tongue());
        margin(out, TRAILER_MARGIN, load.trailerMargin(in.get(TRAILER_RATING)), Limit.TRAILER_RATING);
        in.find(VEHICLE).ifPresent(vehicle -> {
            in.find(VEHICLE_RATING).ifPresent(rating ->
                    margin(out, VEHICLE_MARGIN, load.vehicleMargin(vehicle, rating), Limit.TOW_VEHICLE_RATING));
            in.find(COMBINED_RATING).ifPresent(rating ->
                    margin(out, COMBINED_MARGIN, load.combinationMargin(vehicle, rating), Limit.COMBINATION_RATING));
        });
        in.find(HITCH_RATING).ifPresent(rating ->
                margin(out, HITCH_MARGIN, new Mass(rating.si() - load.gross().si()), Limit.HITCH_RATING));
        out.find("hitch-class", TrailerHitch.forGross(load.gross()).map(TrailerHitch::id).orElse("above-class-4"));
        if (in.get(BUSINESS)) {
            in.find(VEHICLE_RATING).ifPresent(vehicle -> license(out, vehicle, in.get(TRAILER_RATING)));
        }
    }

    private static void margin(Outcome out, Output output, Mass margin, Limit limit) {
        out.put(output, margin);
        if (margin.si() < 0) {
            out.limit(limit).warn(Warning.Kind.OVER_RATING, output.id());
        }
    }

    private static void license(Outcome out, Mass vehicle, Mass trailer) {
        out.source(Source.COMMERCIAL_LICENSE);
        Optional<String> license = Optional.empty();
        if (CommercialLicense.needsGroupA(vehicle, trailer)) {
            license = Optional.of("group-a");
        } else if (CommercialLicense.needsGroupB(vehicle, trailer)) {
            license = Optional.of("group-b");
        }
        license.ifPresent(group -> out.find("license", group));
        if (CommercialLicense.isMotorCarrier(vehicle, trailer)) {
            out.find("rules", "motor-carrier").warn(Warning.Kind.COMMERCIAL_RULES, BUSINESS.id());
        }
    }

    private static void tieDowns(Point in, Outcome out) {
        TieDown each = new TieDown(in.get(KIND).limit(), in.get(RUN));
        Mass load = in.get(LOAD);
        int byStrength = each.numberByStrength(load);
        int byLength = TieDown.numberByLength(in.get(LENGTH), load, in.get(BLOCKED));
        int machinery = TieDown.numberForMachinery(load);
        int number = Math.max(byStrength, Math.max(byLength, machinery));
        out.count(NUMBER, number).put(HOLDS, TieDown.holds(Collections.nCopies(number, each)));
        if (number == byLength) {
            out.limit(Limit.CARGO_LENGTH);
        } else {
            out.limit(number == machinery ? Limit.HEAVY_EQUIPMENT : Limit.WORKING_LOAD);
        }
    }
}
