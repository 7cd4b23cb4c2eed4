package fencerow.sizing.catalogue;

import static fencerow.sizing.catalogue.TractorParameters.AHEAD;
import static fencerow.sizing.catalogue.TractorParameters.BEHIND;
import static fencerow.sizing.catalogue.TractorParameters.FRONT_AXLE;
import static fencerow.sizing.catalogue.TractorParameters.FRONT_LOAD;
import static fencerow.sizing.catalogue.TractorParameters.REAR_AXLE;
import static fencerow.sizing.catalogue.TractorParameters.REAR_LOAD;
import static fencerow.sizing.catalogue.TractorParameters.WHEELBASE;

import fencerow.sizing.Axles;
import fencerow.sizing.BallastSupply;
import fencerow.sizing.Bounds;
import fencerow.sizing.Caution;
import fencerow.sizing.FrontBallast;
import fencerow.sizing.Limit;
import fencerow.sizing.RearBallast;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import java.util.Arrays;
import java.util.List;

/** Axle loads, the ballast that keeps them right, and what supplies it. */
final class BalanceCalculations {
    private static final Bounds<Mass> RATING =
            new Bounds<>("rating", Mass.ofPounds(300), Mass.ofPounds(20_000));
    private static final Measured<Mass> FRONT_RATING =
            Measured.of(RATING.as("front-axle-rating"), Mass::of, Mass.ofPounds(100));
    private static final Measured<Mass> REAR_RATING =
            Measured.of(RATING.as("rear-axle-rating"), Mass::of, Mass.ofPounds(100));
    private static final Measured<Mass> LIFTED = TractorParameters.load("front-load", 1000);
    private static final Measured<Mass> IMPLEMENT = TractorParameters.load("rear-load", 800);

    private static final Output FRONT = mass("front-axle-load");
    private static final Output REAR = mass("rear-axle-load");
    private static final Output TOTAL = mass("total");
    private static final Output FRONT_SHARE = new Output("front-share-of-total", Dimension.RATIO);
    private static final Output FRONT_OF_UNLADEN = new Output("front-share-of-unladen", Dimension.RATIO);
    private static final Output REAR_OF_UNLADEN = new Output("rear-share-of-unladen", Dimension.RATIO);
    private static final Output ON_HITCH = mass("ballast-on-hitch");
    private static final Output IN_WHEELS = mass("ballast-in-wheels");
    private static final Output IN_FRONT = mass("ballast-in-front");
    private static final Output IN_FRONT_OF_WHOLE = mass("ballast-in-front-by-total");

    private BalanceCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("axle-loads")
                        .asks(FRONT_LOAD, AHEAD, REAR_LOAD, BEHIND, FRONT_RATING, REAR_RATING)
                        .gives(FRONT, REAR, TOTAL, FRONT_SHARE, FRONT_OF_UNLADEN, REAR_OF_UNLADEN)
                        .beware(Caution.STEERING_WEIGHT)
                        .by(BalanceCalculations::axleLoads),
                named("rear-ballast")
                        .asks(LIFTED, AHEAD, BEHIND)
                        .gives(ON_HITCH, IN_WHEELS, FRONT, REAR)
                        .by(BalanceCalculations::rearBallast),
                named("front-ballast")
                        .asks(IMPLEMENT, BEHIND, AHEAD)
                        .gives(IN_FRONT, IN_FRONT_OF_WHOLE, FRONT, REAR)
                        .from(Source.ROTARY_CUTTER_MANUAL, Source.SMALL_TRACTOR_MANUAL)
                        .beware(Caution.STEERING_WEIGHT)
                        .by(BalanceCalculations::frontBallast),
                named("ballast-choices")
                        .asks(LIFTED, AHEAD, BEHIND)
                        .asks(Arrays.stream(BallastSupply.values()).map(BalanceCalculations::price)
                                .toArray(Parameter[]::new))
                        .gives(Arrays.stream(BallastSupply.values())
                                .flatMap(each -> List.of(needed(each), frontWith(each), cost(each)).stream())
                                .toArray(Output[]::new))
                        .from(Source.LEVER_STATICS, Source.TRADE_PRACTICE)
                        .by(BalanceCalculations::choices));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.BALANCE)
                .asks(FRONT_AXLE, REAR_AXLE, WHEELBASE)
                .from(Source.IMPLEMENT_MANUALS)
                .beware(Caution.NOT_AN_APPROVAL, Caution.BALLAST_BEFORE_LIFTING, Caution.AXLE_AND_TIRE_RATINGS)
                .beware(Caution.SLOPES, Caution.ROPS_AND_BELT);
    }

    private static Output mass(String id) {
        return new Output(id, Dimension.MASS);
    }

    private static Output needed(BallastSupply supply) {
        return mass(supply.id());
    }

    private static Output frontWith(BallastSupply supply) {
        return mass("front-axle-with-" + supply.id());
    }

    private static Output cost(BallastSupply supply) {
        return new Output("cost-of-" + supply.id(), Dimension.MONEY);
    }

    /** Price of 100 pounds of it, where the shopper or the showroom knows one. */
    private static Measured<Amount> price(BallastSupply supply) {
        return Measured.money("price-of-100-lb-" + supply.id(), 0, 1000, 10);
    }

    private static void axleLoads(Point in, Outcome out) {
        Axles bare = TractorParameters.axles(in);
        Axles loaded = bare.withAhead(in.get(FRONT_LOAD), in.get(AHEAD)).withBehind(in.get(REAR_LOAD), in.get(BEHIND));
        double unladen = bare.total().si();
        Ratio front = new Ratio(loaded.front().si() / unladen);
        Ratio rear = new Ratio(loaded.rear().si() / unladen);
        out.put(TOTAL, loaded.total()).put(FRONT_SHARE, loaded.frontShare());
        out.put(FRONT_OF_UNLADEN, front).put(REAR_OF_UNLADEN, rear);
        axles(loaded, out);
        out.warnIf(front.si() < FrontBallast.FRONT_SHARE.si(), Warning.Kind.LIGHT_STEERING, FRONT.id());
        out.warnIf(rear.si() < RearBallast.REAR_SHARE.si(), Warning.Kind.LIGHT_REAR_AXLE, REAR.id());
        in.find(FRONT_RATING).ifPresent(rating ->
                out.warnIf(loaded.front().si() > rating.si(), Warning.Kind.OVER_RATING, FRONT.id()));
        in.find(REAR_RATING).ifPresent(rating ->
                out.warnIf(loaded.rear().si() > rating.si(), Warning.Kind.OVER_RATING, REAR.id()));
    }

    private static void rearBallast(Point in, Outcome out) {
        Axles bare = TractorParameters.axles(in);
        Axles loaded = bare.withAhead(in.get(LIFTED), in.get(AHEAD));
        Mass onHitch = RearBallast.needed(loaded, bare.total(), in.get(BEHIND));
        out.put(ON_HITCH, onHitch);
        out.put(IN_WHEELS, RearBallast.needed(loaded, bare.total(), new Length(0)));
        axles(loaded.withBehind(onHitch, in.get(BEHIND)), out);
        out.limit(onHitch.si() > 0 ? Limit.REAR_AXLE_SHARE : Limit.NO_BALLAST_NEEDED);
    }

    private static void frontBallast(Point in, Outcome out) {
        Axles bare = TractorParameters.axles(in);
        Axles loaded = bare.withBehind(in.get(IMPLEMENT), in.get(BEHIND));
        Mass ballast = FrontBallast.needed(loaded, bare.total(), in.get(AHEAD));
        out.put(IN_FRONT, ballast);
        out.put(IN_FRONT_OF_WHOLE, FrontBallast.neededOfWhole(loaded, in.get(AHEAD)));
        axles(loaded.withAhead(ballast, in.get(AHEAD)), out);
        out.limit(ballast.si() > 0 ? Limit.STEERING_SHARE : Limit.NO_BALLAST_NEEDED);
        out.warnIf(ballast.si() > 0, Warning.Kind.LIGHT_STEERING, FRONT.id());
    }

    private static void choices(Point in, Outcome out) {
        Axles bare = TractorParameters.axles(in);
        Axles loaded = bare.withAhead(in.get(LIFTED), in.get(AHEAD));
        for (BallastSupply supply : BallastSupply.values()) {
            Length behind = supply.behindRearAxle(in.get(BEHIND));
            Mass ballast = RearBallast.needed(loaded, bare.total(), behind);
            out.put(needed(supply), ballast);
            out.put(frontWith(supply), loaded.withBehind(ballast, behind).front());
            in.find(price(supply)).ifPresent(per100 ->
                    out.put(cost(supply), Measured.dollars(per100.si() * ballast.toPounds() / 100)));
            supply.drawbacks().forEach(drawback -> out.find(supply.id(), drawback.id()));
        }
    }

    private static void axles(Axles axles, Outcome out) {
        out.put(FRONT, axles.front()).put(REAR, axles.rear());
    }
}
