package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Money;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Time;
import java.util.Arrays;
import org.apache.poi.ss.formula.functions.Finance;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoneyTest {

    /** Against a spreadsheet library's PMT. */
    @Test
    void paymentsEqualASpreadsheets() {
        Draws.forAll(draws -> {
            Money principal = Money.ofDollars(draws.between(1000, 80_000));
            double yearly = draws.between(0, 0.2);
            int payments = draws.whole(6, 120);
            double expected = -Finance.pmt(yearly / 12, payments, principal.toDollars());
            Money payment = new Loan(principal, Ratio.ofFraction(yearly), payments).payment();
            assertEquals(expected, payment.toDollars(), 0.00501);
        });
    }

    /** By a spreadsheet library's NPV the payments are worth the cash price at the rate found. */
    @Test
    void theRateHiddenInAnOfferMakesItsNetPresentValueZero() {
        Draws.forAll(draws -> {
            int payments = draws.whole(12, 84);
            Money financed = Money.ofDollars(draws.between(10_000, 60_000));
            Money cash = Money.ofDollars(financed.toDollars() * draws.between(0.85, 0.98));
            Money payment = new Loan(financed, Ratio.ofPercent(0), payments).payment();
            double[] flows = new double[payments + 1];
            Arrays.fill(flows, -payment.toDollars());
            flows[0] = cash.toDollars();
            double monthly = Loan.impliedRate(cash, payment, payments).si() / 12;
            assertEquals(0, FinanceLib.npv(monthly, flows), 0.001);
            assertTrue(monthly > 0);
        });
    }

    /** The implied rate turns a loan back into its own rate. */
    @Test
    void aLoanWithoutRebateHidesItsOwnRate() {
        Loan loan = new Loan(Money.ofDollars(20_000), Ratio.ofPercent(5), 60);
        Ratio implied = Loan.impliedRate(loan.principal(), loan.payment(), 60);
        assertEquals(5, implied.toPercent(), 0.001);
    }

    @Test
    void withoutInterestPaymentsAddUpToThePrincipal() {
        Loan loan = new Loan(Money.ofDollars(24_000), Ratio.ofPercent(0), 48);
        assertEquals(Money.ofDollars(500), loan.payment());
        assertEquals(Money.ZERO, loan.interest());
    }

    /** Capital recovery factor at 8 and 5 % over 15 years: arithmetic, against a spreadsheet library too. */
    @ParameterizedTest
    @CsvSource({"8, 15, 0.116830", "5, 15, 0.096342"})
    void capitalRecoveryFactor(double percent, int years, double expected) {
        double factor = CapitalRecovery.factor(Ratio.ofPercent(percent), years);
        assertEquals(expected, factor, 5e-7);
        assertEquals(-FinanceLib.pmt(percent / 100, years, 1, 0, false), factor, 1e-12);
    }

    /** 130,000, 34,500 after 15 years, 8 %: Estimating Farm Machinery Costs, Iowa State; factor not rounded. */
    @Test
    void yearlyCostOfTheBulletinsTractor() {
        assertEquals(13_917, yearly(130_000, 34_500, 8, 15), 0.6);
    }

    /** 55,000, 10,000 after 10 years, 10 %: 8,324, a question page's worked example. */
    @Test
    void yearlyCostOfAPublishedExercise() {
        assertEquals(8324, yearly(55_000, 10_000, 10, 10), 0.6);
    }

    /** 25,000 falling to 10,000 in 10 years, straight line: 1,500 a year, a forum's example. */
    @Test
    void withoutInterestOnlyTheValueLostCounts() {
        assertEquals(1500, yearly(25_000, 10_000, 0, 10), 0.001);
    }

    private static double yearly(long price, long left, double percent, int years) {
        return CapitalRecovery.yearly(
                        Money.ofDollars(price), Money.ofDollars(left), Ratio.ofPercent(percent), years)
                .toDollars();
    }

    /** List 110,000 x 23 % left is 25,300; off a price of 93,500 that is 68,200: Iowa State, earlier edition. */
    @Test
    void depreciationOfTheBulletinsTractor() {
        Money left = Money.ofDollars(110_000 * Ratio.ofPercent(23).si());
        assertEquals(Money.ofDollars(25_300), left);
        assertEquals(Money.ofDollars(68_200), Money.ofDollars(93_500).minus(left));
        assertEquals(Money.ofDollars(34_500), Money.ofDollars(150_000 * Ratio.ofPercent(23).si()));
    }

    /** 36 % after 10 years at 300 h, all sizes: Machinery Cost Estimates, University of Illinois; rows from memory. */
    @Test
    void oneBulletinsShareLiesBetweenTheSizes() {
        double[] shares = Arrays.stream(RemainingValue.values())
                .mapToDouble(row -> row.share(Time.ofYears(10), Time.ofHours(300)).toPercent())
                .sorted()
                .toArray();
        assertTrue(shares[0] < 36 && 36 < shares[2]);
        assertEquals(32.2, shares[0], 0.05);
        assertEquals(34.2, shares[1], 0.05);
        assertEquals(37.5, shares[2], 0.05);
    }

    @Test
    void valueFallsWithAgeAndHours() {
        Draws.forAll(draws -> {
            Time age = Time.ofYears(draws.between(0, 28));
            Time hours = Time.ofHours(draws.between(0, 1000));
            for (RemainingValue row : RemainingValue.values()) {
                double now = row.share(age, hours).si();
                assertTrue(row.share(Time.ofYears(age.toYears() + 1), hours).si() < now);
                assertTrue(row.share(age, Time.ofHours(hours.toHours() + 50)).si() < now);
                assertTrue(row.spread(age, hours).contains(RemainingValue.olderShare(age)));
            }
        });
    }

    @Test
    void rowsByPowerMeetAtTheirEnds() {
        assertEquals(RemainingValue.UNDER_80_HP, RemainingValue.forPower(Power.ofHorsepower(79.9)));
        assertEquals(RemainingValue.FROM_80_TO_150_HP, RemainingValue.forPower(Power.ofHorsepower(80)));
        assertEquals(RemainingValue.OVER_150_HP, RemainingValue.forPower(Power.ofHorsepower(151)));
    }

    /** About 25 % of list after 6,000 h: trade press on Iowa State figures; the other rows from memory of ASAE D497. */
    @ParameterizedTest(name = "{0} after {1} h")
    @CsvSource({
        "TRACTOR_2WD, 6000, 25.2, 0.3", "TRACTOR_2WD, 12000, 100.8, 0.05", "TRACTOR_4WD, 1000, 0.30, 0.005",
        "TRACTOR_4WD, 1500, 0.68, 0.006", "ROTARY_MOWER, 1000, 44, 0.001", "ROTARY_TILLER, 1000, 36, 0.001",
        "DISC_MOWER_CONDITIONER, 1000, 16, 0.001"
    })
    void repairsByHours(RepairCost machine, double hours, double percent, double tolerance) {
        assertEquals(percent, machine.accumulated(Time.ofHours(hours)).toPercent(), tolerance);
        assertEquals(machine.accumulated(Time.ofHours(hours)).si(),
                machine.between(Time.ofHours(0), Time.ofHours(hours)).si(), 1e-12);
    }

    /** 0.044 gal/h for each PTO hp: 4.62 at 105 hp, trade press on Iowa State figures; 1.76 at 40 hp. */
    @ParameterizedTest
    @CsvSource({"105, 4.62", "40, 1.76"})
    void averageFuel(double horsepower, double gallons) {
        assertEquals(gallons, FuelUse.DIESEL.average(Power.ofHorsepower(horsepower)).toGallonsPerHour(), 1e-9);
    }

    /** Oil and grease for that tractor: 2.36 dollars an hour by the same press, which takes fuel at 3.40 a gallon. */
    @Test
    void lubricantsAreFifteenPercentOfFuel() {
        double gallons = FuelUse.DIESEL.average(Power.ofHorsepower(105)).toGallonsPerHour();
        assertEquals(2.36, gallons * 3.40 * FuelUse.LUBRICANTS.si(), 0.005);
    }

    /** 0.73 x 0.06 = 0.0438 gal/hp-h of diesel: a sheet of machinery cost equations; ours is within 0.5 %. */
    @Test
    void dieselIsSeventyThreePercentOfGasoline() {
        Power horse = Power.ofHorsepower(100);
        double gasoline = FuelUse.GASOLINE.average(horse).toGallonsPerHour();
        assertEquals(0.73 * gasoline, FuelUse.DIESEL.average(horse).toGallonsPerHour(), 0.025);
    }

    /** Fuel by load, gallons for each hp-hour: from memory of ASAE D497. */
    @ParameterizedTest
    @CsvSource({"30, 0.132", "50, 0.099", "60, 0.089", "80, 0.081", "100, 0.083"})
    void fuelByLoad(double percent, double gallonsPerHorsepowerHour) {
        double gallons = FuelUse.dieselAt(Power.ofHorsepower(100), Ratio.ofPercent(percent)).toGallonsPerHour();
        assertEquals(gallonsPerHorsepowerHour, gallons / percent, 0.0006);
    }

    @Test
    void aYearAddsUpItsParts() {
        YearlyCost cost = YearlyCost.of(
                Money.ofDollars(25_000), Money.ofDollars(30_000), Ratio.ofPercent(40), Ratio.ofPercent(5), 10,
                Time.ofHours(100), Power.ofHorsepower(28), Money.ofDollars(4), Ratio.ofPercent(1.5));
        assertEquals(yearly(25_000, 12_000, 5, 10), cost.capital().toDollars(), 0.005);
        assertEquals(0.044 * 28 * 100 * 4, cost.fuel().toDollars(), 0.005);
        assertEquals(0.15 * cost.fuel().toDollars(), cost.oil().toDollars(), 0.01);
        assertEquals(450, cost.upkeep().toDollars(), 0.005);
        assertEquals(300, cost.shelter().toDollars(), 0.005);
        double sum = cost.capital().toDollars() + cost.fuel().toDollars() + cost.oil().toDollars() + 750;
        assertEquals(sum, cost.total().toDollars(), 0.005);
    }

    /** What comes back at resale: common practice, no source. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "QUICK_ATTACH, 60, 100", "REMOTES_OR_THIRD_FUNCTION, 30, 60", "CAB, 50, 70", "MOWER_DECK, 30, 50",
        "IRON_WEIGHTS, 60, 90", "TIRE_FLUID, 0, 50"
    })
    void returnAtResale(ResaleReturn addOn, double low, double high) {
        assertEquals(low, addOn.share().low().toPercent(), 1e-9);
        assertEquals(high, addOn.share().high().toPercent(), 1e-9);
    }

    @Test
    void refusesLoansThatAreNone() {
        Money price = Money.ofDollars(20_000);
        assertThrows(IllegalArgumentException.class, () -> new Loan(Money.ZERO, Ratio.ofPercent(5), 60));
        assertThrows(IllegalArgumentException.class, () -> new Loan(price, Ratio.ofPercent(5), 0));
        assertThrows(OutOfRangeException.class, () -> new Loan(price, Ratio.ofPercent(40), 60));
        assertThrows(IllegalArgumentException.class,
                () -> Loan.impliedRate(price, Money.ofDollars(100), 60));
        assertThrows(IllegalArgumentException.class, () -> CapitalRecovery.factor(Ratio.ofPercent(5), 0));
        assertThrows(OutOfRangeException.class,
                () -> RepairCost.ROTARY_MOWER.accumulated(Time.ofHours(5000)));
    }
}
