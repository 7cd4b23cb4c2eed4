package fencerow.sizing.catalogue;

import fencerow.sizing.Caution;
import fencerow.sizing.Limit;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** What formulas say while a calculation runs; the union over all corners of the input ranges. Lives for one run. */
final class Outcome {
    final Map<String, Spread<Amount>> amounts = new LinkedHashMap<>();
    final Map<String, Spread<Amount>> used = new LinkedHashMap<>();
    final Set<Limit> limits = new LinkedHashSet<>();
    final Set<Source> sources = new LinkedHashSet<>();
    final Set<Caution> cautions = new LinkedHashSet<>();
    final Set<Warning> warnings = new LinkedHashSet<>();
    final Set<Finding> findings = new LinkedHashSet<>();

    Outcome put(Output output, Quantity value) {
        return put(output, Spread.exactly(value));
    }

    Outcome put(Output output, Money value) {
        return put(output, new Amount(Dimension.MONEY, value.toDollars()));
    }

    Outcome count(Output output, long value) {
        return put(output, Amount.count(value));
    }

    Outcome put(Output output, Spread<? extends Quantity> range) {
        Spread<Amount> amounts = range.amounts();
        if (amounts.low().dimension() != output.dimension()) {
            throw new IllegalArgumentException(
                    output.id() + " is a " + output.dimension().id() + ", not a " + amounts.low().dimension().id());
        }
        this.amounts.merge(output.id(), amounts, Outcome::union);
        return this;
    }

    /** Names a value that was taken for a parameter without preset. */
    Outcome used(Measured<?> parameter, Spread<? extends Quantity> range) {
        used.merge(parameter.id(), range.amounts(), Outcome::union);
        return this;
    }

    Outcome limit(Limit limit) {
        limits.add(limit);
        return this;
    }

    Outcome source(Source source) {
        sources.add(source);
        return this;
    }

    Outcome caution(Caution caution) {
        cautions.add(caution);
        return this;
    }

    Outcome find(String about, String id) {
        findings.add(new Finding(about, id));
        return this;
    }

    Outcome warn(Warning.Kind kind, String about) {
        warnings.add(new Warning(kind, about));
        return this;
    }

    /** Warns where something is so. */
    Outcome warnIf(boolean so, Warning.Kind kind, String about) {
        return so ? warn(kind, about) : this;
    }

    private static Spread<Amount> union(Spread<Amount> a, Spread<Amount> b) {
        return Spread.of(
                a.low().si() <= b.low().si() ? a.low() : b.low(),
                a.high().si() >= b.high().si() ? a.high() : b.high());
    }
}
