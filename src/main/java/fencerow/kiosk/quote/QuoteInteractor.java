package fencerow.kiosk.quote;

import fencerow.kiosk.compare.CompareInteractor;
import fencerow.kiosk.compare.CompareModel;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.matching.Dollars;
import fencerow.match.Difference;
import fencerow.match.Match;
import fencerow.stock.Catalogue;
import fencerow.stock.Condition;
import fencerow.stock.UsualModel;
import fencerow.terms.Amount;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.Payment;
import fencerow.terms.UnitId;
import fencerow.visit.SecondQuote;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Bill;
import fencerow.wording.Phrases;
import fencerow.wording.Reasons;
import fencerow.wording.Texts;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Thinks about what a shopper tells of another seller's tractor. */
final class QuoteInteractor {
    private static final List<Integer> COMMON_HOURS = List.of(50, 250, 500, 1000);
    private static final List<Integer> HOUR_STEPS = List.of(-100, -10, 10, 100);
    private static final int MOST_HOURS = 20_000;
    private static final int MOST_AGAINST = 4;

    private final Showroom showroom;
    private final Phrases phrases;
    private final Texts texts;

    QuoteInteractor(Showroom showroom, Phrases phrases) {
        this.showroom = showroom;
        this.phrases = phrases;
        this.texts = phrases.texts();
    }

    private Catalogue catalogue() {
        return showroom.catalogue();
    }

    /** What has been told so far. */
    Optional<SecondQuote> told(Visit visit) {
        return visit.secondQuote().map(unit -> SecondQuote.of(unit, catalogue()));
    }

    /** The visit with this told. */
    Visit with(Visit visit, SecondQuote quote) {
        return visit.told(Optional.of(quote.unit(catalogue())));
    }

    QuoteModel.Machine machine(Optional<MachineClass> size, Optional<SecondQuote> told) {
        List<QuoteModel.Choice> sizes = Arrays.stream(MachineClass.values())
                .filter(each -> UsualModel.of(each, catalogue()).isPresent())
                .map(each -> new QuoteModel.Choice(each.id(), texts.get("class." + each.id()),
                        Optional.of(power(each)), Optional.of(each).equals(size)))
                .toList();
        List<QuoteModel.Choice> states = Arrays.stream(Condition.values())
                .map(each -> new QuoteModel.Choice(each.id(), texts.get("kiosk.quote.state." + each.id()),
                        Optional.empty(), told.map(SecondQuote::condition).equals(Optional.of(each))))
                .toList();
        Optional<QuoteModel.Hours> hours = told
                .filter(quote -> quote.condition() != Condition.NEW)
                .map(quote -> hours(quote.hours()));
        return new QuoteModel.Machine(sizes, states, hours);
    }

    /** The engine power of the showroom's models of the size, from the least to the most. */
    private String power(MachineClass size) {
        List<Amount> powers = catalogue().models().stream()
                .filter(model -> model.machineClass() == size)
                .flatMap(model -> model.findFigure(Figure.ENGINE_POWER).stream())
                .sorted(Comparator.comparingDouble(Amount::si))
                .toList();
        return powers.isEmpty() ? "" : texts.get("kiosk.quote.power", Map.of(
                "low", phrases.amount(powers.get(0)), "high", phrases.amount(powers.get(powers.size() - 1))));
    }

    private QuoteModel.Hours hours(OptionalInt told) {
        String words = told.isPresent()
                ? texts.get("kiosk.quote.hours", Map.of("hours", told.getAsInt()))
                : texts.get("kiosk.ask.no-amount");
        List<QuoteModel.Choice> common = COMMON_HOURS.stream()
                .map(each -> new QuoteModel.Choice(Integer.toString(each),
                        texts.get("kiosk.quote.about-hours", Map.of("hours", each)), Optional.empty(),
                        told.isPresent() && told.getAsInt() == each))
                .toList();
        List<QuoteModel.Change> changes = HOUR_STEPS.stream()
                .map(by -> new QuoteModel.Change(by, texts.get(by < 0 ? "kiosk.ask.less" : "kiosk.ask.more",
                        Map.of("amount", texts.get("kiosk.quote.hours", Map.of("hours", Math.abs(by)))))))
                .toList();
        return new QuoteModel.Hours(words, common, changes);
    }

    SecondQuote changedHours(SecondQuote quote, int by) {
        int hours = Math.max(0, Math.min(MOST_HOURS, quote.hours().orElse(0) + by));
        return quote.withHours(OptionalInt.of(hours));
    }

    QuoteModel.Price price(SecondQuote quote, PriceLine typing) {
        List<QuoteModel.Field> fields = Arrays.stream(PriceLine.values())
                .map(line -> new QuoteModel.Field(line, texts.get("price." + line.id()),
                        amount(line.in(quote.price())), line == typing))
                .toList();
        Money out = quote.price().outTheDoor();
        return new QuoteModel.Price(fields, phrases.money(out), quote.price().trade()
                .filter(trade -> trade.cents() > 0)
                .map(trade -> phrases.money(out.minus(trade))));
    }

    private String amount(Money money) {
        return money.cents() == 0 ? texts.get("kiosk.quote.blank") : phrases.money(money);
    }

    SecondQuote typed(SecondQuote quote, PriceLine line, String digits) {
        return changed(quote, line, Dollars.typed(line.in(quote.price()), digits));
    }

    SecondQuote takenAway(SecondQuote quote, PriceLine line) {
        return changed(quote, line, Dollars.takenAway(line.in(quote.price())));
    }

    private static SecondQuote changed(SecondQuote quote, PriceLine line, Money amount) {
        return quote.withPrice(line.changed(quote.price(), amount));
    }

    /** Core features and those that this shopper's work touches, in walk-around order. */
    QuoteModel.Equipment equipment(SecondQuote quote, Predicate<FeatureId> matters) {
        return new QuoteModel.Equipment(quote.askable(catalogue()).stream()
                .filter(feature -> feature.core() || matters.test(feature.id()))
                .sorted(Comparator.comparing(Feature::stop))
                .map(feature -> new QuoteModel.Seen(feature.id(), phrases.labels().feature(feature.id()),
                        texts.get("feature." + feature.id() + ".check"),
                        Optional.ofNullable(quote.seen().get(feature.id()))))
                .toList());
    }

    QuoteModel.Beside beside(Outlook outlook) {
        List<Match> matches = outlook.ranking().matches();
        Optional<Match> told = matches.stream().filter(QuoteInteractor::isTold).findFirst();
        Optional<Match> best = matches.stream().filter(match -> !isTold(match)).findFirst();
        List<UnitId> ids = Stream.of(told, best).flatMap(Optional::stream).map(match -> match.unit().id()).toList();
        CompareModel units = new CompareInteractor(showroom, phrases).model(ids, outlook);
        List<String> against = told.filter(match -> !match.verdict().hasPlan())
                .map(match -> new Reasons(phrases).speaksAgainst(match, outlook.ranking()))
                .orElse(List.of());
        Optional<Difference> difference = told.flatMap(one -> best.flatMap(other -> Difference.of(one, other)));
        return new QuoteModel.Beside(told.map(match -> summary(match, difference)).orElse(""),
                against.subList(0, Math.min(MOST_AGAINST, against.size())),
                List.of(texts.get("kiosk.quote.usual"), texts.get("kiosk.quote.unknown")),
                difference.filter(found -> !found.lines().isEmpty()).map(this::explained), units);
    }

    private QuoteModel.Difference explained(Difference found) {
        return new QuoteModel.Difference(found.lines().stream().map(this::line).toList(), moreOrLess(found.more()));
    }

    private Bill.Line line(Difference.Line line) {
        String what = line.item()
                .map(phrases.labels()::item)
                .orElseGet(() -> texts.get(line.kind() == Difference.Kind.TRADE
                        ? "kiosk.quote.trade"
                        : "price." + line.kind().id()));
        return new Bill.Line(what, moreOrLess(line.more()));
    }

    private String moreOrLess(Money more) {
        String key = more.cents() > 0 ? "more" : more.cents() < 0 ? "less" : "same";
        return texts.get("kiosk.quote." + key, Map.of("amount", phrases.money(size(more))));
    }

    private static Money size(Money amount) {
        return new Money(Math.abs(amount.cents()));
    }

    private static boolean isTold(Match match) {
        return match.unit().id().equals(SecondQuote.ID);
    }

    /** @param difference to the best here; empty where one of the two has no plan */
    private String summary(Match told, Optional<Difference> difference) {
        if (!told.verdict().hasPlan()) {
            return texts.get("kiosk.quote.not-ready", Map.of(
                    "verdict", texts.get("verdict." + told.verdict().id() + ".name"), "score", phrases.score(told)));
        }
        Payment price = told.price().total();
        if (difference.isEmpty()) {
            return texts.get("kiosk.quote.alone", Map.of("price", phrases.range(price)));
        }
        Money more = difference.get().more();
        String key = more.cents() > 0 ? "dearer" : more.cents() < 0 ? "cheaper" : "alike";
        return texts.get("kiosk.quote." + key,
                Map.of("price", phrases.range(price), "amount", phrases.money(size(more))));
    }
}
