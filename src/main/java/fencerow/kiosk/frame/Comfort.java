package fencerow.kiosk.frame;

import fencerow.desk.Settings;
import fencerow.kiosk.kit.TextSize;

/**
 * How a shopper likes to read. Forgotten with the visit.
 *
 * @param language     as a BCP 47 tag
 * @param textSize     how large the words are
 * @param highContrast black on white instead of ink on paper
 * @param metric       metric units rather than US customary
 */
public record Comfort(String language, TextSize textSize, boolean highContrast, boolean metric) {
    /** What every visit starts with in this showroom. */
    static Comfort usual(Settings settings) {
        return new Comfort(settings.languages().get(0), TextSize.NORMAL, false, settings.metric());
    }

    /** In another language. */
    public Comfort withLanguage(String other) {
        return new Comfort(other, textSize, highContrast, metric);
    }

    /** With words of another size. */
    public Comfort withTextSize(TextSize other) {
        return new Comfort(language, other, highContrast, metric);
    }

    /** With the other contrast. */
    public Comfort withOtherContrast() {
        return new Comfort(language, textSize, !highContrast, metric);
    }

    /** With the other system of units. */
    public Comfort withOtherUnits() {
        return new Comfort(language, textSize, highContrast, !metric);
    }
}
