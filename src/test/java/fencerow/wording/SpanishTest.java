package fencerow.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import fencerow.terms.Spread;
import fencerow.terms.UnitOfMeasure;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Spanish as written in the US: plurals and lists of Spanish, figures and money of the country. */
class SpanishTest {
    private static final Texts TEXTS = new Texts("es", Map.of(
            "lines", "{count, plural, one {# rengl\u00f3n} other {# renglones}}",
            "price.range", "{low} a {high}"));
    private static final Quantities US = new Quantities(TEXTS.locale(), false);
    private static final Quantities METRIC = new Quantities(TEXTS.locale(), true);
    private static final Phrases PHRASES = new Phrases(TEXTS, US::show);

    /** Unicode CLDR, locale es-US. */
    @Test
    void moneyAndNumbersAreWrittenAsInTheUnitedStates() {
        assertEquals("es-US", TEXTS.locale().toLanguageTag());
        assertEquals("$18,000", PHRASES.money(Money.ofDollars(18_000)));
        assertEquals("$1,500 a $2,300",
                PHRASES.range(new PriceRange(Money.ofDollars(1_500), Money.ofDollars(2_300))));
        assertEquals("es-MX", new Texts("es-MX", Map.of()).locale().toLanguageTag());
        assertEquals("1,234 renglones", TEXTS.get("lines", Map.of("count", 1_234)));
    }

    /** Unicode CLDR, plural rules and lists of Spanish. */
    @Test
    void pluralsAndListsFollowTheLanguage() {
        assertEquals("1 rengl\u00f3n", TEXTS.get("lines", Map.of("count", 1)));
        assertEquals("0 renglones", TEXTS.get("lines", Map.of("count", 0)));
        assertEquals("podar, cavar y nivelar", PHRASES.list(List.of("podar", "cavar", "nivelar")));
        assertEquals("podar e irrigar", PHRASES.list(List.of("podar", "irrigar")));
    }

    @Test
    void unitsHaveTheirSpanishSymbols() {
        assertEquals("84 pulg", plain(US.show(UnitOfMeasure.INCH.of(84))));
        assertEquals("4 mi/h", plain(US.show(UnitOfMeasure.MILE_PER_HOUR.of(4))));
        assertEquals("5.3 gal/min", plain(US.show(UnitOfMeasure.US_GALLON_PER_MINUTE.of(5.3))));
        assertEquals("5 a\u00f1os", plain(US.show(UnitOfMeasure.YEAR.of(5))));
        assertEquals("1,200 kg", plain(METRIC.show(UnitOfMeasure.KILOGRAM.of(1_200))));
        assertEquals("2.5 m", plain(METRIC.show(UnitOfMeasure.METER.of(2.5))));
    }

    @Test
    void whatIsShownCanBeReadBack() {
        for (Amount amount : List.of(UnitOfMeasure.INCH.of(84), UnitOfMeasure.FOOT.of(300),
                UnitOfMeasure.MILE_PER_HOUR.of(4), UnitOfMeasure.US_GALLON_PER_MINUTE.of(5),
                new Amount(Dimension.MONEY, 18_000))) {
            String shown = US.show(amount).replace('\u00a0', ' ');
            assertEquals(amount.si(), US.parse(shown, amount.dimension()).si(), 1e-6, shown);
            assertEquals(Spread.exactly(amount).low().si(), US.parseRange(shown, amount.dimension()).low().si(), 1e-6);
        }
    }

    private static String plain(String shown) {
        return shown.replace('\u00a0', ' ');
    }
}
