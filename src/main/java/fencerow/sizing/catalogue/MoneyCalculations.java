package fencerow.sizing.catalogue;

import fencerow.sizing.CapitalRecovery;
import fencerow.sizing.Caution;
import fencerow.sizing.Loan;
import fencerow.sizing.PtoPower;
import fencerow.sizing.RemainingValue;
import fencerow.sizing.RepairCost;
import fencerow.sizing.ResaleReturn;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.sizing.YearlyCost;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;
import fencerow.terms.Time;
import java.util.List;

/** What a tractor costs, keeps and returns. */
final class MoneyCalculations {
    private static final Measured<Amount> PRINCIPAL = money("principal", 100, 500_000, 20_000);
    private static final Measured<Ratio> RATE = Measured.of(Loan.RATE, Ratio::of, Ratio.ofPercent(0.5))
            .preset(Ratio.ofPercent(7))
            .usual(Ratio.ofPercent(0), Ratio.ofPercent(15));
    private static final Measured<Amount> PAYMENTS = Measured.count("payments", 1, Loan.MOST_PAYMENTS, 60);
    private static final Measured<Amount> CASH = money("cash-price", 100, 500_000, 22_000);
    private static final Measured<Amount> FINANCED = money("financed-price", 100, 500_000, 24_000);
    private static final Measured<Ratio> OFFERED = RATE.as("offered-rate").preset(Ratio.ofPercent(0));
    private static final Measured<Amount> LIST = money("list-price", 1000, 500_000, 30_000);
    private static final Measured<Amount> PRICE = money("price", 500, 500_000, 25_000);
    private static final Choice<RemainingValue> SIZE =
            Choice.of("engine-size", RemainingValue.class, RemainingValue::id, RemainingValue.UNDER_80_HP);
    private static final Measured<Power> PTO = Measured.of(
                    PtoPower.POWER.as("pto-power"), Power::of, Power.ofHorsepower(1))
            .preset(Power.ofHorsepower(28));
    private static final Measured<Time> AGE = Measured.of(RemainingValue.AGE, Time::of, Time.ofYears(1))
            .preset(Time.ofYears(5));
    private static final Measured<Time> HOURS = Measured.of(RemainingValue.HOURS_A_YEAR, Time::of, Time.ofHours(10))
            .preset(Time.ofHours(100))
            .usual(Time.ofHours(20), Time.ofHours(600));
    private static final Measured<Amount> YEARS = Measured.count("years-kept", 1, 30, 10);
    private static final Measured<Ratio> INTEREST =
            Measured.of(CapitalRecovery.RATE.as("interest"), Ratio::of, Ratio.ofPercent(0.5))
                    .preset(Ratio.ofPercent(5));
    private static final Measured<Amount> GALLON =
            Measured.money("price-of-gallon", 0, 20, 0.1).preset(Measured.dollars(4));
    private static final Measured<Ratio> UPKEEP = Measured.of(
                    CapitalRecovery.RATE.as("upkeep"), Ratio::of, Ratio.ofPercent(0.25))
            .preset(RepairCost.SERVICE_FLOOR.low(), RepairCost.SERVICE_FLOOR.high());
    private static final Choice<ResaleReturn> ADD_ON =
            Choice.of("add-on", ResaleReturn.class, ResaleReturn::id, ResaleReturn.QUICK_ATTACH);
    private static final Measured<Amount> ADD_ON_PRICE = money("price", 10, 50_000, 900);

    private static final Output PAYMENT = money("payment");
    private static final Output TOTAL = money("total");
    private static final Output PAID_INTEREST = money("interest-paid");
    private static final Output IMPLIED = new Output("implied-rate", Dimension.RATIO);
    private static final Output NEWER_SHARE = new Output("share-left", Dimension.RATIO);
    private static final Output OLDER_SHARE = new Output("share-left-older-form", Dimension.RATIO);
    private static final Output VALUE = money("value-left");
    private static final Output CAPITAL = money("capital");
    private static final Output FUEL = money("fuel");
    private static final Output OIL = money("oil");
    private static final Output CARE = money("upkeep");
    private static final Output SHELTER = money("shelter");
    private static final Output YEAR = money("yearly");
    private static final Output HOUR = money("hourly");
    private static final Output RETURN = money("return");

    /** Share by which the two forms may lie apart before it is said. */
    private static final double FAR_APART = 0.25;

    private MoneyCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("loan")
                        .asks(PRINCIPAL, RATE, PAYMENTS)
                        .gives(PAYMENT, TOTAL, PAID_INTEREST)
                        .from(Source.LOAN_FORMULA)
                        .beware(Caution.NOT_AN_OFFER_OF_CREDIT)
                        .by(MoneyCalculations::loan),
                named("rebate-or-rate")
                        .asks(CASH, FINANCED, OFFERED, PAYMENTS)
                        .gives(PAYMENT, TOTAL, IMPLIED)
                        .from(Source.LOAN_FORMULA)
                        .beware(Caution.NOT_AN_OFFER_OF_CREDIT)
                        .by(MoneyCalculations::rebateOrRate),
                named("remaining-value")
                        .asks(LIST, SIZE, AGE, HOURS)
                        .gives(NEWER_SHARE, OLDER_SHARE, VALUE)
                        .from(Source.MACHINERY_MANAGEMENT_DATA, Source.TRACTOR_COSTS_BULLETIN)
                        .by(MoneyCalculations::remainingValue),
                named("yearly-cost")
                        .asks(PRICE, LIST, SIZE, YEARS, HOURS, INTEREST, PTO, GALLON, UPKEEP)
                        .gives(CAPITAL, FUEL, OIL, CARE, SHELTER, YEAR, HOUR)
                        .from(Source.MACHINERY_COSTS_BULLETIN, Source.TRACTOR_COSTS_ARTICLE, Source.TRADE_PRACTICE)
                        .from(Source.MACHINERY_MANAGEMENT_DATA)
                        .by(MoneyCalculations::yearlyCost),
                named("resale-return")
                        .asks(ADD_ON, ADD_ON_PRICE)
                        .gives(RETURN)
                        .from(Source.TRADE_PRACTICE)
                        .by(MoneyCalculations::resale));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.MONEY).beware(Caution.ESTIMATE_NOT_APPRAISAL);
    }

    private static Measured<Amount> money(String id, double min, double max, double preset) {
        return Measured.money(id, min, max, 100).preset(Measured.dollars(preset));
    }

    private static Output money(String id) {
        return new Output(id, Dimension.MONEY);
    }

    private static Money dollars(Point in, Measured<Amount> parameter) {
        return Money.ofDollars(in.get(parameter).si());
    }

    private static void loan(Point in, Outcome out) {
        Loan loan = new Loan(dollars(in, PRINCIPAL), in.get(RATE), in.count(PAYMENTS));
        out.put(PAYMENT, loan.payment()).put(TOTAL, loan.total()).put(PAID_INTEREST, loan.interest());
    }

    private static void rebateOrRate(Point in, Outcome out) {
        Loan loan = new Loan(dollars(in, FINANCED), in.get(OFFERED), in.count(PAYMENTS));
        out.put(PAYMENT, loan.payment()).put(TOTAL, loan.total());
        out.put(IMPLIED, Loan.impliedRate(dollars(in, CASH), loan.payment(), loan.payments()));
    }

    private static void remainingValue(Point in, Outcome out) {
        Time age = in.get(AGE);
        RemainingValue row = in.get(SIZE);
        Ratio newer = row.share(age, in.get(HOURS));
        Ratio older = RemainingValue.olderShare(age);
        Spread<Ratio> both = row.spread(age, in.get(HOURS));
        double list = in.get(LIST).si();
        out.put(NEWER_SHARE, newer).put(OLDER_SHARE, older);
        out.put(VALUE, Spread.of(
                Measured.dollars(list * both.low().si()), Measured.dollars(list * both.high().si())));
        boolean apart = both.high().si() - both.low().si() > FAR_APART * both.high().si();
        out.warnIf(apart, Warning.Kind.METHODS_DIFFER, VALUE.id());
    }

    private static void yearlyCost(Point in, Outcome out) {
        int years = in.count(YEARS);
        Ratio left = in.get(SIZE).share(Time.ofYears(years), in.get(HOURS));
        YearlyCost cost = YearlyCost.of(
                dollars(in, PRICE), dollars(in, LIST), left, in.get(INTEREST), years, in.get(HOURS), in.get(PTO),
                dollars(in, GALLON), in.get(UPKEEP));
        out.put(CAPITAL, cost.capital()).put(FUEL, cost.fuel()).put(OIL, cost.oil());
        out.put(CARE, cost.upkeep()).put(SHELTER, cost.shelter()).put(YEAR, cost.total());
        double hours = in.get(HOURS).toHours();
        if (hours > 0) {
            out.put(HOUR, Measured.dollars(cost.total().toDollars() / hours));
        }
    }

    private static void resale(Point in, Outcome out) {
        Spread<Ratio> share = in.get(ADD_ON).share();
        double price = in.get(ADD_ON_PRICE).si();
        out.put(RETURN, Spread.of(
                Measured.dollars(price * share.low().si()), Measured.dollars(price * share.high().si())));
    }
}
