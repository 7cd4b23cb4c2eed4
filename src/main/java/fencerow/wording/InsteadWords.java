package fencerow.wording;

import fencerow.terms.PriceRange;
import fencerow.visit.Instead;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Other ways to get a job done, in words.
 *
 * @param phrases sentences of the language
 */
public record InsteadWords(Phrases phrases) {
    /** The job's name. */
    public String job(Instead instead) {
        return phrases.texts().get("job." + instead.job().id() + ".name");
    }

    /** The way, and what it costs a year; as a choice still open. */
    public String way(Instead instead) {
        return way("other-way.", instead);
    }

    /** The same, as chosen. */
    public String chosen(Instead instead) {
        return way("other-way.chosen.", instead);
    }

    private String way(String prefix, Instead instead) {
        PriceRange yearly = instead.yearly();
        return phrases.texts().get(prefix + instead.way().id(), Map.of(
                "low", phrases.money(yearly.low()), "high", phrases.money(yearly.high())));
    }

    /** What owning takes, and when it pays; empty where there is no tractor to own. */
    public Optional<String> owning(Instead instead) {
        return instead.owning().map(owning -> {
            if (owning.price().isZero()) {
                return phrases.texts().get("other-way.owning.nothing");
            }
            String price = phrases.range(owning.price());
            return owning.years()
                    .map(years -> phrases.texts().get("other-way.owning.pays", Map.of(
                            "price", price, "fewest", years.fewest(), "most", years.most(),
                            "years", years.fewest() == years.most() ? "one" : "range")))
                    .orElseGet(() -> phrases.texts().get("other-way.owning.costs", Map.of("price", price)));
        });
    }

    /** All of it, as sentences. */
    public String whole(Instead instead) {
        return owning(instead)
                .map(owning -> phrases.texts().get("other-way.whole", Map.of("way", way(instead), "owning", owning)))
                .orElseGet(() -> way(instead));
    }

    /** The first way of each job, as sentences by job name. */
    public List<Bill.Line> first(List<Instead> all) {
        return Instead.first(all).stream().map(each -> new Bill.Line(job(each), whole(each))).toList();
    }
}
