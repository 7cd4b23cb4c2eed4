package fencerow.sizing.catalogue;

import fencerow.sizing.Bounds;
import fencerow.sizing.Caution;
import fencerow.sizing.Draft;
import fencerow.sizing.DrivelineAngle;
import fencerow.sizing.ImplementPower;
import fencerow.sizing.Limit;
import fencerow.sizing.PtoPower;
import fencerow.sizing.PtoType;
import fencerow.sizing.RotaryPower;
import fencerow.sizing.Source;
import fencerow.sizing.ToolPower;
import fencerow.sizing.Transmission;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Angle;
import fencerow.terms.Dimension;
import fencerow.terms.Force;
import fencerow.terms.Length;
import fencerow.terms.Power;
import fencerow.terms.Speed;
import fencerow.terms.Spread;
import java.util.List;

/** Power at the shaft, and what tools ask of it. */
final class PowerCalculations {
    private static final Measured<Power> ENGINE = Measured.of(
                    PtoPower.POWER.as("engine-power"), Power::of, Power.ofHorsepower(1))
            .preset(Power.ofHorsepower(25))
            .usual(Power.ofHorsepower(15), Power.ofHorsepower(100));
    /** Left out, it is taken as a share of the engine's. */
    private static final Measured<Power> PTO = Measured.of(
                    PtoPower.POWER.as("pto-power"), Power::of, Power.ofHorsepower(1))
            .usual(Power.ofHorsepower(10), Power.ofHorsepower(90));
    private static final Measured<Length> ALTITUDE =
            Measured.of(PtoPower.ALTITUDE, Length::of, Length.ofFeet(500)).preset(Length.ofFeet(0));
    private static final Choice<Transmission> TRANSMISSION =
            Choice.of("transmission", Transmission.class, Transmission::id, Transmission.HYDROSTATIC);
    private static final Choice<ImplementPower> IMPLEMENT =
            Choice.of("implement", ImplementPower.class, ImplementPower::id, ImplementPower.ROTARY_CUTTER);
    private static final Choice<RotaryPower> HAY_TOOL =
            Choice.of("hay-tool", RotaryPower.class, RotaryPower::id, RotaryPower.DISC_MOWER);
    private static final Choice<ToolPower> TOOL =
            Choice.of("tool", ToolPower.class, ToolPower::id, ToolPower.WOOD_CHIPPER_4_IN);
    private static final Measured<Length> WIDTH = Measured.of(ImplementPower.WIDTH, Length::of, Length.ofInches(6))
            .preset(Length.ofInches(60))
            .usual(Length.ofFeet(3), Length.ofFeet(10));
    private static final Measured<Power> AVAILABLE = PTO.as("power").preset(Power.ofHorsepower(20));
    private static final Choice<Draft> TILLAGE =
            Choice.of("tillage", Draft.class, Draft::id, Draft.MOLDBOARD_PLOW);
    private static final Choice<Draft.Soil> SOIL =
            Choice.of("soil", Draft.Soil.class, Draft.Soil::id, Draft.Soil.MEDIUM);
    private static final Measured<Speed> SPEED =
            Measured.of(Draft.SPEED, Speed::of, Speed.ofMph(0.5)).preset(Speed.ofMph(3));
    private static final Measured<Length> DEPTH =
            Measured.of(Draft.DEPTH, Length::of, Length.ofInches(1)).preset(Length.ofInches(6));
    private static final Measured<Length> TILLED = Measured.of(
                    new Bounds<>("tilled-width", Length.ofMeters(0.2), Length.ofMeters(12)),
                    Length::of,
                    Length.ofInches(2))
            .preset(Length.ofInches(12));
    private static final Measured<Amount> SHANKS = Measured.count("shanks", 1, 12, 1);
    private static final Measured<Length> DRIVELINE =
            Measured.of(DrivelineAngle.LENGTH, Length::of, Length.ofInches(1)).preset(Length.ofInches(40));
    private static final Measured<Length> OFFSET = Measured.of(
                    DrivelineAngle.LENGTH.as("offset"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(8));
    private static final Choice<PtoType> TYPE = Choice.of("pto-type", PtoType.class, PtoType::id, PtoType.TYPE_1);
    private static final Measured<Length> WOUND = Measured.of(
                    new Bounds<>("wound-diameter", Length.ofInches(0.5), Length.ofInches(12)),
                    Length::of,
                    Length.ofInches(0.5))
            .preset(Length.ofInches(3));

    private static final Output AT_PTO = new Output("pto-power", Dimension.POWER);
    private static final Output AT_DRAWBAR = new Output("drawbar-power", Dimension.POWER);
    private static final Output NEEDED = new Output("power-needed", Dimension.POWER);
    private static final Output WIDEST = new Output("width-driven", Dimension.LENGTH);
    private static final Output PULL = new Output("pull", Dimension.FORCE);
    private static final Output ANGLE = new Output("joint-angle", Dimension.ANGLE);
    private static final Output LIFE = new Output("joint-life", Dimension.TIME);
    private static final Output WINDING = new Output("winding-speed", Dimension.SPEED);

    private PowerCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("pto-power")
                        .asks(ENGINE, TRANSMISSION, PTO, ALTITUDE)
                        .gives(AT_PTO, AT_DRAWBAR)
                        .from(Source.POWER_RATINGS_TEXTBOOK)
                        .by(PowerCalculations::ptoPower),
                named("power-needed").asks(IMPLEMENT, WIDTH).gives(NEEDED).by(PowerCalculations::needed),
                named("hay-tool-power")
                        .asks(HAY_TOOL, WIDTH)
                        .gives(NEEDED)
                        .from(Source.MACHINERY_MANAGEMENT_DATA)
                        .beware(Caution.THROWN_OBJECTS)
                        .by((in, out) -> out.put(NEEDED, in.get(HAY_TOOL).needed(in.get(WIDTH)))),
                named("tool-power")
                        .asks(TOOL)
                        .gives(NEEDED)
                        .from(Source.TRADE_PRACTICE)
                        .beware(Caution.DIG_SAFELY)
                        .by((in, out) -> out.put(NEEDED, in.get(TOOL).needed())),
                named("width-driven").asks(IMPLEMENT, AVAILABLE).gives(WIDEST).by(PowerCalculations::widest),
                named("draft")
                        .asks(TILLAGE, SOIL, SPEED, DEPTH, TILLED, SHANKS)
                        .gives(PULL, AT_DRAWBAR)
                        .from(Source.MACHINERY_MANAGEMENT_DATA)
                        .beware(Caution.DIG_SAFELY, Caution.NOT_AN_APPROVAL)
                        .by(PowerCalculations::draft),
                named("driveline-angle")
                        .asks(DRIVELINE, OFFSET)
                        .gives(ANGLE, LIFE)
                        .from(Source.SNOW_BLOWER_MANUAL)
                        .by(PowerCalculations::joint),
                named("shaft-speed")
                        .asks(TYPE, WOUND)
                        .gives(WINDING)
                        .from(Source.PTO_TYPES, Source.CHIPPER_SAFETY_MANUAL)
                        .by((in, out) -> out.put(WINDING, in.get(TYPE).windingSpeed(in.get(WOUND)))));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.POWER)
                .beware(Caution.PTO_GUARDS, Caution.PTO_OFF_FIRST, Caution.PTO_SPEED_MATCH);
    }

    private static void ptoPower(Point in, Outcome out) {
        Spread<Power> pto = in.find(PTO)
                .map(Spread::exactly)
                .orElseGet(() -> PtoPower.fromEngine(in.get(ENGINE), in.get(TRANSMISSION)));
        boolean published = in.find(PTO).isPresent();
        Spread<Power> here = Spread.of(
                PtoPower.atAltitude(pto.low(), in.get(ALTITUDE)), PtoPower.atAltitude(pto.high(), in.get(ALTITUDE)));
        out.put(AT_PTO, here);
        out.put(AT_DRAWBAR, Spread.of(share(here.low()), share(here.high())));
        out.limit(published ? Limit.PUBLISHED_POWER : Limit.POWER_SHARE);
        if (!published) {
            out.source(Source.TRADE_PRACTICE);
        }
    }

    private static Power share(Power pto) {
        return new Power(pto.si() * PtoPower.TEXTBOOK_SHARE.si());
    }

    private static void needed(Point in, Outcome out) {
        ImplementPower implement = in.get(IMPLEMENT);
        out.put(NEEDED, implement.needed(in.get(WIDTH))).source(implement.source());
    }

    private static void widest(Point in, Outcome out) {
        ImplementPower implement = in.get(IMPLEMENT);
        out.put(WIDEST, implement.widthDriven(in.get(AVAILABLE)));
        out.source(implement.source()).limit(Limit.AVAILABLE_POWER);
    }

    private static void draft(Point in, Outcome out) {
        Draft tillage = in.get(TILLAGE);
        double extent = tillage.isByShank() ? in.count(SHANKS) : in.get(TILLED).si();
        Spread<Force> pull = tillage.pull(in.get(SOIL), in.get(SPEED), extent, in.get(DEPTH));
        out.put(PULL, pull);
        out.put(AT_DRAWBAR, Spread.of(
                Draft.drawbarPower(pull.low(), in.get(SPEED)), Draft.drawbarPower(pull.high(), in.get(SPEED))));
    }

    private static void joint(Point in, Outcome out) {
        Angle angle = DrivelineAngle.of(in.get(DRIVELINE), in.get(OFFSET));
        out.put(ANGLE, angle);
        double most = DrivelineAngle.ANGLE.max().si();
        double within = Math.max(DrivelineAngle.ANGLE.min().si(), Math.min(most, angle.si()));
        out.put(LIFE, DrivelineAngle.life(new Angle(within)));
        out.warnIf(within < angle.si(), Warning.Kind.OUT_OF_ORDER, ANGLE.id());
    }
}
