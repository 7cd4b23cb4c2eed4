package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Power;
import fencerow.terms.Spread;
import java.util.ArrayList;
import java.util.List;

/**
 * Three-point hitch categories: the tractor powers they go with, their pins, and the spread of the lower links.
 *
 * <p>Source: {@link Source#HITCH_CATEGORIES}; mast heights and category 1N {@link Source#HITCH_STANDARD}, from memory.
 * Spreads are the trade's, hitch to hitch; between inner faces the standard has 683 mm for category 1 and 825 mm for 2.
 * Bands overlap. Caution: {@link Caution#STAND_CLEAR_OF_HITCH}.
 */
public enum HitchCategory {
    CATEGORY_0("0", 0, 20, 0.625, 0.625, 20, 305),
    CATEGORY_1("1", 20, 45, 0.75, 0.875, 28, 460),
    /** Narrow: pins of category 1 on a narrower spread. */
    CATEGORY_1N("1n", 0, 47, 0.75, 0.875, 400 / 25.4, 360),
    CATEGORY_2("2", 40, 100, 1, 1.125, 34, 610),
    CATEGORY_3("3", 80, 225, 1.25, 1.4375, 40, 685);

    private final String id;
    private final Spread<Power> power;
    private final Length topPin;
    private final Length lowerPin;
    private final Length spread;
    private final Length mast;

    HitchCategory(
            String id, double lowHp, double highHp, double topInches, double lowerInches, double spreadInches,
            double mastMillimeters) {
        this.id = id;
        this.power = Spread.of(Power.ofHorsepower(lowHp), Power.ofHorsepower(highHp));
        this.topPin = Length.ofInches(topInches);
        this.lowerPin = Length.ofInches(lowerInches);
        this.spread = Length.ofInches(spreadInches);
        this.mast = Length.ofMillimeters(mastMillimeters);
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Tractor powers it goes with. */
    public Spread<Power> power() {
        return power;
    }

    /** Pin of the top link. */
    public Length topPin() {
        return topPin;
    }

    /** Pins of the lower links. */
    public Length lowerPin() {
        return lowerPin;
    }

    /** Between the lower links, as the trade measures. */
    public Length lowerSpread() {
        return spread;
    }

    /** Height of the mast. */
    public Length mast() {
        return mast;
    }

    /** Full-size categories that go with a tractor of this power, smallest first; two where bands overlap. */
    public static List<HitchCategory> forPower(Power power) {
        List<HitchCategory> fitting = new ArrayList<>();
        for (HitchCategory category : values()) {
            if (category != CATEGORY_1N && category.power.contains(power)) {
                fitting.add(category);
            }
        }
        return List.copyOf(fitting);
    }

    /** Whether a tool with this lower pin goes on, with a bushing where the pin is smaller than the hole. */
    public boolean takesPin(Length toolLowerPin) {
        return toolLowerPin.si() <= lowerPin.si() + 1e-9;
    }
}
