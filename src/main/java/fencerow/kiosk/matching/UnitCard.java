package fencerow.kiosk.matching;

import fencerow.match.Verdict;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import fencerow.terms.UnitId;
import java.util.List;

/**
 * A unit with its price and reasons.
 *
 * @param where         it is
 * @param price         ready to work, or as it stands where it cannot be made ready
 * @param priceParts    what the price is made of
 * @param score         how well it suits, in words
 * @param speaksFor     reasons, the weightiest first
 * @param speaksAgainst reasons, the weightiest first
 * @param toCheck       what nobody has checked that matters
 */
public record UnitCard(
        UnitId unit,
        Verdict verdict,
        String verdictName,
        String title,
        String where,
        String price,
        String priceParts,
        Bar bar,
        String score,
        List<String> speaksFor,
        List<String> speaksAgainst,
        List<String> toCheck,
        boolean pinned) {
    /** Copies the lists. */
    public UnitCard {
        speaksFor = List.copyOf(speaksFor);
        speaksAgainst = List.copyOf(speaksAgainst);
        toCheck = List.copyOf(toCheck);
    }

    /**
     * A price drawn to scale.
     *
     * @param asked   out the door
     * @param further to equip it and to catch up
     * @param longest the highest price of all bars beside it
     */
    public record Bar(Money asked, PriceRange further, Money longest) {}
}
