package fencerow.sizing;

import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Calculations;
import fencerow.sizing.catalogue.Inputs;
import fencerow.terms.Angle;
import fencerow.terms.Area;
import fencerow.terms.Flow;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Money;
import fencerow.terms.Power;
import fencerow.terms.Pressure;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Time;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** What one unit costs to size: the functions that matching calls, and the whole catalogue behind its one face. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OneUnitBench {
    private static final List<HydraulicTool> TOOLS = List.of(HydraulicTool.GRAPPLE, HydraulicTool.TOP_LINK);

    private final Mass front = Mass.ofPounds(1300);
    private final Mass rear = Mass.ofPounds(1750);
    private final Length wheelbase = Length.ofInches(67);
    private final Length behind = Length.ofInches(55);
    private final Length pins = Length.ofInches(35);
    private final Length center = Length.ofInches(28);
    private final Mass liftAtPins = Mass.ofPounds(2000);
    private final Mass liftAhead = Mass.ofPounds(1550);
    private final Mass liftAtEnds = Mass.ofPounds(1800);
    private final Mass liftBehindEnds = Mass.ofPounds(1400);
    private final Length toolCenter = Length.ofInches(20);
    private final Carried forks = new Carried(Mass.ofPounds(250), Length.ofInches(10));
    private final Mass load = Mass.ofPounds(1000);
    private final Mass tool = Mass.ofPounds(700);
    private final Power pto = Power.ofHorsepower(22);
    private final Length width = Length.ofInches(60);
    private final Area area = Area.ofAcres(3);
    private final Time time = Time.ofHours(2);
    private final Speed speed = Speed.ofMph(4);
    private final Ratio efficiency = Ratio.ofPercent(70);

    /** Everything that matching asks for one unit; the target is below 50 microseconds. */
    @Benchmark
    public void whatMatchingAsks(Blackhole sink) {
        Axles bare = new Axles(front, rear, wheelbase);
        LiftAtDistance loader = LiftAtDistance.fromRatings(liftAtPins, liftAhead, Length.ofMillimeters(500));
        LiftAtDistance hitch = LiftAtDistance.fromRatings(liftAtEnds, liftBehindEnds, Length.ofInches(24));
        Axles lifting = bare.withAhead(load, new Length(pins.si() + center.si()));
        Axles carrying = bare.withBehind(tool, behind);
        sink.consume(loader.payload(center, forks));
        sink.consume(LoaderPayload.of(loader, bare, bare.total(), pins, center, forks).limit());
        sink.consume(RearBallast.needed(lifting, bare.total(), behind));
        sink.consume(FrontBallast.needed(carrying, bare.total(), pins));
        sink.consume(lifting);
        sink.consume(carrying);
        sink.consume(hitch.at(toolCenter));
        for (ImplementPower implement : ImplementPower.values()) {
            sink.consume(implement.needed(width));
            sink.consume(implement.widthDriven(pto));
        }
        sink.consume(FieldCapacity.widthToFinish(area, time, speed, efficiency));
        sink.consume(FieldCapacity.time(area, width, speed, efficiency));
        sink.consume(TrailerLoad.of(Mass.ofPounds(2200), bare.total(), load, tool).trailerMargin(Mass.ofPounds(7000)));
        sink.consume(TireFluid.mass(TireSize.all().get(9), Fluid.BEET_JUICE, 2));
        sink.consume(DoorFit.above(Length.ofInches(84), Length.ofInches(92), DoorFit.USUAL_MARGIN));
        sink.consume(RemainingValue.UNDER_80_HP.spread(Time.ofYears(5), Time.ofHours(100)));
    }

    /** The other formulas: oil, snow, hauling, money and used tractors. */
    @Benchmark
    public void otherFormulas(Blackhole sink) {
        Cylinder splitter = new Cylinder(Length.ofInches(4), Length.ofInches(2), Length.ofInches(24));
        Flow flow = Flow.ofGpm(6);
        Pressure pressure = Pressure.ofPsi(2500);
        sink.consume(splitter.push(pressure));
        sink.consume(splitter.cycleTime(flow));
        sink.consume(HydraulicPower.toDrive(pressure, flow, Ratio.ofPercent(85)));
        sink.consume(Circuits.atOnce(TOOLS));
        sink.consume(PtoPower.fromEngine(pto, Transmission.HYDROSTATIC));
        sink.consume(Draft.MOLDBOARD_PLOW.pull(Draft.Soil.MEDIUM, speed, 0.3, Length.ofInches(6)));
        sink.consume(DrivelineAngle.life(Angle.ofDegrees(12)));
        sink.consume(HitchCategory.forPower(pto));
        sink.consume(BucketVolume.mass(
                BucketVolume.rated(Area.ofSquareFeet(1.6), width, Length.ofInches(20)),
                Material.GRAVEL_DRY.density().low(),
                Ratio.ofPercent(100)));
        sink.consume(TieDown.numberByLength(Length.ofFeet(12), load, false));
        sink.consume(CommercialLicense.needsGroupA(Mass.ofPounds(14_000), Mass.ofPounds(12_000)));
        sink.consume(SnowCover.mass(Area.ofSquareFeet(2400), Length.ofInches(6), SnowDensity.SETTLED.density()));
        sink.consume(AngledBlade.passes(Length.ofFeet(12), width, Angle.ofDegrees(30), Length.ofInches(6)));
        sink.consume(TurningSpace.radius(wheelbase, Angle.ofDegrees(50), Length.ofInches(40), width, pins));
        sink.consume(new Loan(Money.ofDollars(20_000), Ratio.ofPercent(7), 60).payment());
        sink.consume(YearlyCost.of(
                Money.ofDollars(25_000), Money.ofDollars(30_000), Ratio.ofPercent(40), Ratio.ofPercent(5), 10,
                Time.ofHours(100), pto, Money.ofDollars(4), Ratio.ofPercent(1.5)));
        sink.consume(RepairCost.TRACTOR_4WD.accumulated(Time.ofHours(1000)));
        sink.consume(UsedHours.perYear(Time.ofHours(800), Time.ofYears(8)));
        sink.consume(NoiseExposure.NIOSH.allowed(92));
    }

    /** Every calculation of the catalogue with its presets, ranges and reasons: what a screen may ask. */
    @Benchmark
    public void wholeCatalogue(Blackhole sink) {
        for (Calculation calculation : Calculations.all()) {
            sink.consume(calculation.run(Inputs.NONE));
        }
    }
}
