package fencerow.wording;

import com.ibm.icu.text.ListFormatter;
import com.ibm.icu.text.NumberFormat;
import com.ibm.icu.util.Currency;
import fencerow.checklist.Because;
import fencerow.checklist.ChecklistLine;
import fencerow.match.Blocked;
import fencerow.match.Concession;
import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.match.Verify;
import fencerow.match.WhatIf;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.terms.Amount;
import fencerow.terms.AtStake;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.JobId;
import fencerow.terms.Money;
import fencerow.terms.Payment;
import fencerow.terms.PriceRange;
import fencerow.terms.Relation;
import fencerow.terms.Threshold;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Turns typed reasons, prices and lines into sentences. Screen, paper and command line all speak through this, so they
 * cannot differ.
 *
 * @param texts   the words of the language
 * @param amounts shows an amount in the shopper's units
 */
public record Phrases(Texts texts, Function<Amount, String> amounts) {
    /** What things are called. */
    public Labels labels() {
        return new Labels(texts);
    }

    /** An amount in the shopper's units. */
    public String amount(Amount amount) {
        return amount.dimension() == Dimension.MONEY
                ? money(Money.ofDollars(amount.si()))
                : amounts.apply(amount);
    }

    /** Whole dollars as the language writes them. */
    public String money(Money money) {
        NumberFormat format = NumberFormat.getCurrencyInstance(texts.locale());
        format.setCurrency(Currency.getInstance("USD"));
        format.setMaximumFractionDigits(0);
        return format.format(money.toDollars());
    }

    /** From low to high; one price where they are the same. */
    public String range(PriceRange range) {
        return range(Payment.of(range));
    }

    /** The same of what is paid in all. */
    public String range(Payment range) {
        if (range.low().equals(range.high())) {
            return money(range.low());
        }
        return texts.get("price.range", Map.of("low", money(range.low()), "high", money(range.high())));
    }

    /** Several things in one sentence: "a, b and c". */
    public String list(Collection<String> things) {
        return ListFormatter.getInstance(texts.locale()).format(things);
    }

    /** Several labels one after the other, in no sentence: "a, b, c". */
    public String series(Collection<String> labels) {
        return ListFormatter.getInstance(texts.locale(), ListFormatter.Type.UNITS, ListFormatter.Width.SHORT)
                .format(labels);
    }

    /** What the shopper wants to get done, in one run of words; empty if they asked for no job. */
    public String work(Needs needs) {
        return list(needs.musts().stream()
                .flatMap(must -> must.why().job().stream())
                .map(labels()::want)
                .toList());
    }

    /** What a requirement asks for. */
    public String requirement(Requirement requirement) {
        CapabilityId of = requirement.demand().of();
        Optional<JobId> job = requirement.why().job();
        if (job.isPresent()) {
            return texts.get("requirement.does", Map.of("want", labels().want(job.get())));
        }
        String name = labels().capability(of);
        Relation relation = requirement.demand().relation();
        Threshold threshold = requirement.demand().threshold();
        if (threshold instanceof Threshold.Counterweight counterweight) {
            return texts.get("requirement.counterweight", Map.of("name", name, "amount", amount(counterweight.load())));
        }
        if (threshold instanceof Threshold.Payload payload) {
            return texts.get("requirement.payload", Map.of("name", name, "amount", amount(payload.load())));
        }
        if (threshold instanceof Threshold.SteeringWeight steering) {
            return texts.get("requirement.steering-weight", Map.of("name", name, "amount", amount(steering.tool())));
        }
        if (threshold instanceof Threshold.MowingWidth mowing) {
            return texts.get("requirement.mowing-width", Map.of(
                    "name", name, "area", amount(mowing.area()), "time", amount(mowing.time())));
        }
        Amount amount = ((Threshold.Fixed) threshold).amount();
        if (amount.dimension() == Dimension.COUNT && amount.si() == 1 && relation == Relation.AT_LEAST) {
            return texts.get("requirement.flag", Map.of("name", name));
        }
        if (amount.dimension() == Dimension.COUNT && amount.si() == 0 && relation == Relation.AT_MOST) {
            return labels().demand(of).orElseGet(() -> texts.get("requirement.none", Map.of("name", name)));
        }
        return texts.get("requirement." + relation.id(), Map.of("name", name, "amount", amount(amount)));
    }

    /** The answer that led to the requirement. */
    public String because(Requirement requirement) {
        if (requirement.why().job().isPresent()) {
            return texts.get("because.job", Map.of("want", labels().want(requirement.why().job().get())));
        }
        String question = "question." + requirement.why().question();
        Optional<String> label = requirement.why()
                .option()
                .flatMap(option -> texts.find(question + ".option." + option + ".label"));
        return label.map(words -> texts.get(
                        "because.option", Map.of("ask", texts.get(question + ".ask"), "label", words)))
                .orElseGet(() -> texts.get(question + ".ask"));
    }

    /** Answer, what it asks for and in which working states, as one sentence. */
    public String chain(Requirement requirement) {
        List<String> states = requirement.demands().stream()
                .map(Demand::in)
                .filter(state -> !state.equals(Demand.ANY_STATE))
                .map(labels()::state)
                .toList();
        return texts.get(states.isEmpty() ? "because.sentence" : "because.sentence-in", Map.of(
                "because", because(requirement),
                "requirement", labels().inSentence(requirement(requirement)),
                "states", list(states)));
    }

    /** Why something could not meet a must-have on the unit. */
    public String blocked(Blocked blocked, Match match) {
        Map<String, Object> words = new HashMap<>();
        words.put("of", labels().capability(blocked.of()));
        words.put("model", labels().model(match.unit().model()));
        words.put("class", texts.get("class." + match.unit().model().machineClass().id()));
        blocked.wanted().ifPresent(wanted -> words.put("wanted", amount(wanted)));
        blocked.available().ifPresent(available -> words.put("available", amount(available)));
        boolean isAmount = blocked.rule() == Blocked.Rule.TOO_LITTLE || blocked.rule() == Blocked.Rule.TOO_MUCH;
        boolean bare = isAmount && (blocked.wanted().isEmpty() || blocked.available().isEmpty());
        String cause = texts.get("blocked." + blocked.rule().id() + (bare ? "-bare" : ""), words);
        if (blocked.rule() == Blocked.Rule.IN_THE_WAY && blocked.item().isPresent()) {
            words.put("item", labels().item(blocked.item().get()));
            return texts.get("blocked.in-the-way-of", words);
        }
        Map<String, Object> chain = new HashMap<>(Map.of("cause", cause));
        blocked.item()
                .filter(item -> !CapabilityId.has(item).equals(blocked.of()))
                .ifPresent(item -> chain.put("item", labels().inSentence(labels().item(item))));
        blocked.in().ifPresent(state -> chain.put("state", labels().state(state)));
        String through = chain.containsKey("item") ? "through" : "itself";
        return texts.get("blocked." + through + (chain.containsKey("state") ? "-in" : ""), chain);
    }

    /** A line of a plan: what, and how many where it is more than one. */
    public String planLine(Plan.Line line) {
        String name = labels().item(line.item());
        return line.count() == 1
                ? texts.get("plan.line", Map.of("name", name))
                : texts.get("plan.lines", Map.of("name", name, "count", line.count()));
    }

    /** What a plan without stopgaps costs more, and what it has. */
    public String better(Plan best, Plan withoutStopgap) {
        Money more = withoutStopgap.price().middle().minus(best.price().middle());
        List<String> items =
                withoutStopgap.lines().stream().map(this::planLine).map(labels()::inSentence).toList();
        return texts.get("plan.better", Map.of("amount", money(more), "items", list(items)));
    }

    /** How well a unit suits. */
    public String score(Match match) {
        if (!match.verdict().hasPlan()) {
            return texts.get("score.musts", Map.of("met", match.score().mustsMet(), "all", match.score().mustsAll()));
        }
        boolean hasWishes = Stream.of(match.score().met(), match.score().planned(), match.score().unmet())
                .anyMatch(some -> !some.isEmpty());
        return hasWishes
                ? texts.get("score.wishes", Map.of("percent", match.score().percent()))
                : texts.get("score.no-wishes");
    }

    /** What to look at before buying, and what hangs on it. */
    public String verify(Verify verify) {
        String feature = labels().inSentence(labels().feature(verify.feature()));
        return verify.flips()
                ? texts.get("verify.flips", Map.of("feature", feature))
                : texts.get("verify.saves", Map.of("feature", feature, "amount", money(verify.saves().high())));
    }

    /** What doing without a must-have would bring. */
    public String change(WhatIf.Change change) {
        String key = change.saves().isEmpty() ? "gained" : change.gained().isEmpty() ? "saves" : "both";
        Map<String, Object> words = new HashMap<>();
        words.put("requirement", requirement(change.dropped()));
        words.put("count", change.gained().size());
        change.saves().ifPresent(saves -> words.put("amount", money(saves)));
        return texts.get("change." + key, words);
    }

    /** What more money would bring. */
    public String change(WhatIf.Budget budget) {
        return texts.get("concession.budget", Map.of(
                "amount", money(budget.raise()), "count", budget.gained().size()));
    }

    /** What doing without two must-haves together would bring. */
    public String change(WhatIf.Pair pair) {
        return texts.get("concession.pair", Map.of(
                "one", requirement(pair.dropped()),
                "other", requirement(pair.alsoDropped()),
                "count", pair.gained().size()));
    }

    /** The one thing to give up for a unit. */
    public String concession(Concession concession) {
        if (concession instanceof Concession.Raise raise) {
            return texts.get("concession.raise", Map.of("amount", money(raise.by())));
        }
        var without = (Concession.Without) concession;
        return texts.get("concession.without", Map.of(
                "requirement", requirement(without.dropped()), "range", range(without.price().total())));
    }

    /** What a wrong belief costs. */
    public String atStake(AtStake atStake) {
        if (atStake.money().isZero()) {
            return texts.get(atStake.job() ? "at-stake.job" : "at-stake.little");
        }
        return texts.get(atStake.job() ? "at-stake.both" : "at-stake.money", Map.of("range", range(atStake.money())));
    }

    /** The number of the shopper's own that a line is checked against. */
    public Optional<String> number(ChecklistLine line) {
        return line.number().map(number -> {
            Amount low = number.amount().low();
            String high = amount(number.amount().high());
            String amount = number.amount().isExact()
                    ? high
                    : low.si() == 0
                            ? texts.get("work.up-to", Map.of("high", high))
                            : texts.get("work.allowed", Map.of("low", amount(low), "high", high));
            return texts.get("work.line." + number.kind().id(), Map.of("amount", amount));
        });
    }

    /** How to check a line in seconds, and against which number. */
    public String how(ChecklistLine line) {
        String how = labels().lineHow(line);
        return number(line).map(number -> how + " " + number).orElse(how);
    }

    /** Why a line is on this shopper's list. */
    public String because(Because because) {
        if (because instanceof Because.YourWork work) {
            String key = work.requirement().must() ? "why-line.your-work" : "why-line.your-wish";
            return texts.get(key, Map.of("requirement", labels().inSentence(requirement(work.requirement()))));
        }
        if (because instanceof Because.WrongBelief wrong) {
            return texts.get(wrong.sure() ? "why-line.wrong-belief-sure" : "why-line.wrong-belief", Map.of(
                    "belief", labels().quizOption(wrong.question(), wrong.believed())));
        }
        return texts.get("why-line." + because.id());
    }
}
