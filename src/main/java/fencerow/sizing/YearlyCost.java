package fencerow.sizing;

import fencerow.terms.Money;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Time;

/**
 * What a tractor costs in a year.
 *
 * <p>Formula: value lost and interest by {@link CapitalRecovery} on the value left by {@link RemainingValue}; fuel by
 * {@link FuelUse} and 15 % of it for oil; upkeep as a share of list price by {@link RepairCost}; insurance and shelter
 * as a share of list price.
 *
 * <p>Source: {@link Source#MACHINERY_COSTS_BULLETIN}, {@link Source#TRACTOR_COSTS_BULLETIN} (1 % for insurance and
 * shelter). Valid for whole years of keeping; tax and labor not counted. Caution:
 * {@link Caution#ESTIMATE_NOT_APPRAISAL}.
 *
 * @param capital value lost and interest
 * @param fuel    fuel
 * @param oil     oil and filters
 * @param upkeep  repairs and service
 * @param shelter insurance and shelter
 */
public record YearlyCost(Money capital, Money fuel, Money oil, Money upkeep, Money shelter) {
    /** Insurance and shelter as a share of list price. */
    public static final Ratio SHELTER = Ratio.ofPercent(1);

    /**
     * Adds up the parts.
     *
     * @param price      paid
     * @param list       list price of an equivalent new tractor
     * @param share      of the list price left at the end
     * @param rate       yearly rate of interest
     * @param years      kept, 1 to 40
     * @param hoursAYear of work
     * @param pto        largest PTO power; average diesel use
     * @param gallon     price of a gallon of fuel
     * @param upkeep     share of list price a year
     * @throws IllegalArgumentException outside the limits of the parts
     */
    public static YearlyCost of(
            Money price, Money list, Ratio share, Ratio rate, int years, Time hoursAYear, Power pto, Money gallon,
            Ratio upkeep) {
        Money left = part(list, share);
        double gallons = FuelUse.DIESEL.average(pto).toGallonsPerHour()
                * new Time(RemainingValue.HOURS_A_YEAR.check(hoursAYear)).toHours();
        Money fuel = Money.ofDollars(gallons * gallon.toDollars());
        return new YearlyCost(
                CapitalRecovery.yearly(price, left, rate, years),
                fuel,
                part(fuel, FuelUse.LUBRICANTS),
                part(list, upkeep),
                part(list, SHELTER));
    }

    /** All parts together. */
    public Money total() {
        return capital.plus(fuel).plus(oil).plus(upkeep).plus(shelter);
    }

    private static Money part(Money whole, Ratio share) {
        return Money.ofDollars(whole.toDollars() * share.si());
    }
}
