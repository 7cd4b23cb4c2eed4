package fencerow.kiosk.kit;

import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import javafx.scene.layout.Region;

/**
 * A ready-to-work price drawn to scale: what is asked, then what equipping costs at least, then how much more it may
 * cost. Bars of one list share one scale. Words beside it say the same in figures.
 */
public final class PriceBar extends Bar {
    private static final double HEIGHT = 6;

    private final double asked;
    private final double least;
    private final double most;
    private final Region asking = part("asking");
    private final Region equipping = part("equipping");
    private final Region range = part("range");

    /**
     * Draws a price.
     *
     * @param asking    out the door, as the unit stands
     * @param equipping fitting, buying and catching up
     * @param longest   the highest price of all bars that are compared; above zero
     * @param name      the same in words, for assistive tools
     */
    public PriceBar(Scale scale, Money asking, PriceRange equipping, Money longest, String name) {
        super(scale, HEIGHT, Styles.PRICE_BAR, name);
        double whole = longest.toDollars();
        this.asked = asking.toDollars() / whole;
        this.least = equipping.low().toDollars() / whole;
        this.most = equipping.high().toDollars() / whole;
        getChildren().setAll(this.asking, this.equipping, range);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double first = Math.round(width * asked);
        double second = Math.round(width * (asked + least));
        double third = Math.round(Math.min(width, width * (asked + most)));
        asking.resizeRelocate(0, 0, first, height);
        equipping.resizeRelocate(first, 0, second - first, height);
        range.resizeRelocate(second, 0, third - second, height);
    }
}
