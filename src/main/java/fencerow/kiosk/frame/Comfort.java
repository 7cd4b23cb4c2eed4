package fencerow.kiosk.frame;

import fencerow.desk.Settings;
import fencerow.kiosk.kit.TextSize;

/**
 * How a shopper likes to read, and reach. Forgotten with the visit.
 *
 * @param language     as a BCP 47 tag
 * @param textSize     how large the words are
 * @param highContrast black on white instead of ink on paper
 * @param metric       metric units rather than US customary
 * @param lowReach     everything that can be touched in the lower part of the screen
 */
public record Comfort(String language, TextSize textSize, boolean highContrast, boolean metric, boolean lowReach) {
    /** With the whole screen in reach. */
    public Comfort(String language, TextSize textSize, boolean highContrast, boolean metric) {
        this(language, textSize, highContrast, metric, false);
    }

    /** What every visit starts with in this showroom. */
    static Comfort usual(Settings settings) {
        return new Comfort(settings.languages().get(0), TextSize.NORMAL, false, settings.metric());
    }

    /** In another language. */
    public Comfort withLanguage(String other) {
        return new Comfort(other, textSize, highContrast, metric, lowReach);
    }

    /** With words of another size. */
    public Comfort withTextSize(TextSize other) {
        return new Comfort(language, other, highContrast, metric, lowReach);
    }

    /** With the other contrast. */
    public Comfort withOtherContrast() {
        return new Comfort(language, textSize, !highContrast, metric, lowReach);
    }

    /** With the other system of units. */
    public Comfort withOtherUnits() {
        return new Comfort(language, textSize, highContrast, !metric, lowReach);
    }

    /** Whether everything can be put lower: on an upright screen whose words leave room for it. */
    static boolean canBeLow(boolean landscape, TextSize textSize) {
        return !landscape && textSize == TextSize.NORMAL;
    }

    /** Whether everything is put lower. */
    boolean isLow(boolean landscape) {
        return lowReach && canBeLow(landscape, textSize);
    }

    /** With everything lower, or over the whole screen again. */
    public Comfort withOtherReach() {
        return new Comfort(language, textSize, highContrast, metric, !lowReach);
    }
}
