package fencerow.sizing.catalogue;

import fencerow.sizing.BucketVolume;
import fencerow.sizing.Caution;
import fencerow.sizing.Firewood;
import fencerow.sizing.Material;
import fencerow.sizing.RoundBale;
import fencerow.sizing.Source;
import fencerow.terms.Amount;
import fencerow.terms.Area;
import fencerow.terms.Density;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;
import fencerow.terms.Volume;
import java.util.List;

/** What a bucketful, a bale or a stack of wood weighs. */
final class MaterialCalculations {
    private static final Measured<Length> BUCKET_WIDTH =
            Measured.of(BucketVolume.WIDTH, Length::of, Length.ofInches(6)).preset(Length.ofInches(60));
    private static final Measured<Length> STRIKE_DEPTH =
            Measured.of(BucketVolume.STRIKE_DEPTH, Length::of, Length.ofInches(1)).preset(Length.ofInches(20));
    private static final Measured<Area> END_AREA = Measured.of(
                    BucketVolume.END_AREA, Area::of, Area.ofSquareFeet(0.1))
            .preset(Area.ofSquareFeet(1.6))
            .usual(Area.ofSquareFeet(0.8), Area.ofSquareFeet(5));
    /** Left out, the material's table value is taken. */
    private static final Measured<Density> DENSITY =
            Measured.of(BucketVolume.DENSITY, Density::of, Density.ofPoundsPerCubicFoot(1));
    private static final Measured<Ratio> FILL = Measured.of(BucketVolume.FILL, Ratio::of, Ratio.ofPercent(5))
            .preset(Ratio.ofPercent(100))
            .usual(Ratio.ofPercent(60), Ratio.ofPercent(115));
    private static final Choice<Material> MATERIAL =
            Choice.of("material", Material.class, Material::id, Material.GRAVEL_DRY);
    private static final Measured<Length> DIAMETER =
            Measured.of(RoundBale.SIZE.as("bale-diameter"), Length::of, Length.ofInches(6)).preset(Length.ofFeet(5));
    private static final Measured<Length> BALE_WIDTH =
            Measured.of(RoundBale.SIZE.as("bale-width"), Length::of, Length.ofInches(6)).preset(Length.ofFeet(5));
    private static final Measured<Density> BALE_DENSITY = Measured.of(
                    RoundBale.DENSITY, Density::of, Density.ofPoundsPerCubicFoot(0.5))
            .preset(RoundBale.TYPICAL)
            .usual(Density.ofPoundsPerCubicFoot(8), Density.ofPoundsPerCubicFoot(15));
    private static final Choice<Firewood> WOOD = Choice.of("wood", Firewood.class, Firewood::id, Firewood.RED_OAK);
    private static final Choice<Boolean> GREEN = Choice.yesNo("green", false);
    private static final Measured<Amount> QUARTER_CORDS = Measured.count("quarter-cords", 1, 40, 1);

    private static final Output STRUCK = new Output("struck", Dimension.VOLUME);
    private static final Output HEAP = new Output("heap", Dimension.VOLUME);
    private static final Output RATED = new Output("rated", Dimension.VOLUME);
    private static final Output MASS = new Output("mass", Dimension.MASS);
    private static final Output VOLUME = new Output("volume", Dimension.VOLUME);

    private MaterialCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("bucket-load")
                        .asks(MATERIAL, DENSITY, BUCKET_WIDTH, STRIKE_DEPTH, END_AREA, FILL)
                        .gives(STRUCK, HEAP, RATED, MASS)
                        .from(Source.BUCKET_RATING, Source.GEOMETRY)
                        .by(MaterialCalculations::bucket),
                named("round-bale")
                        .asks(DIAMETER, BALE_WIDTH, BALE_DENSITY)
                        .gives(VOLUME, MASS)
                        .from(Source.BALE_WEIGHT)
                        .beware(Caution.BALE_ROLLS_BACK)
                        .by(MaterialCalculations::bale),
                named("firewood")
                        .asks(WOOD, GREEN, QUARTER_CORDS)
                        .gives(MASS)
                        .from(Source.CORD_WEIGHTS)
                        .by(MaterialCalculations::firewood));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.LOADER)
                .beware(Caution.NOT_AN_APPROVAL, Caution.CARRY_LOW, Caution.NOBODY_UNDER_LOAD);
    }

    private static void bucket(Point in, Outcome out) {
        Length width = in.get(BUCKET_WIDTH);
        Material material = in.get(MATERIAL);
        Spread<Density> density = in.find(DENSITY).map(Spread::exactly).orElse(material.density());
        Volume rated = BucketVolume.rated(in.get(END_AREA), width, in.get(STRIKE_DEPTH));
        out.put(STRUCK, BucketVolume.struck(in.get(END_AREA), width));
        out.put(HEAP, BucketVolume.heap(width, in.get(STRIKE_DEPTH)));
        out.put(RATED, rated);
        out.put(MASS, Spread.of(
                BucketVolume.mass(rated, density.low(), in.get(FILL)),
                BucketVolume.mass(rated, density.high(), in.get(FILL))));
        out.used(DENSITY, density).source(material.source());
    }

    private static void bale(Point in, Outcome out) {
        out.put(VOLUME, RoundBale.volume(in.get(DIAMETER), in.get(BALE_WIDTH)));
        out.put(MASS, RoundBale.mass(in.get(DIAMETER), in.get(BALE_WIDTH), in.get(BALE_DENSITY)));
    }

    private static void firewood(Point in, Outcome out) {
        Firewood wood = in.get(WOOD);
        Spread<Mass> cord = in.get(GREEN) ? wood.greenCord() : wood.dryCord();
        double cords = in.count(QUARTER_CORDS) / 4.0;
        out.put(MASS, Spread.of(new Mass(cord.low().si() * cords), new Mass(cord.high().si() * cords)));
    }
}
