package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Availability;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Holds units against a shopper's needs. Immutable; may be used from any thread. */
public final class Matcher {
    private final Catalogue catalogue;

    /** Matches with this catalogue's items and prices. */
    public Matcher(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** One unit held against the needs: verdict, cheapest plan or true causes, score and ready-to-work price. */
    public Match match(Unit unit, Needs needs) {
        var bench = new Workbench(ProblemCompiler.compile(catalogue, unit, needs), needs);
        Headline headline = headline(bench);
        Verdict verdict = verdict(unit, bench, headline);
        Finding finding = finding(unit, needs, bench, headline);
        PriceRange planPrice =
                finding instanceof Finding.Feasible feasible ? feasible.best().price() : PriceRange.ZERO;
        var price = new ReadyPrice(unit.price(), catchUp(unit), planPrice);
        return new Match(
                unit,
                verdict,
                finding,
                verify(bench, headline, verdict),
                headline.bracketed(),
                score(needs, bench, headline),
                price,
                overBudget(needs, price, verdict));
    }

    /** The must-haves and items of one match, with the switches the solver takes. */
    private record Workbench(Problem problem, Needs needs) {
        boolean[] allMusts() {
            boolean[] active = new boolean[needs.requirements().size()];
            for (int i = 0; i < active.length; i++) {
                active[i] = needs.requirements().get(i).must();
            }
            return active;
        }

        Optional<Solver.Solution> solve(long[] base, boolean[] active) {
            return Solver.solve(problem, base, active, new boolean[problem.items().size()]);
        }

        Optional<Solver.Solution> solveWithoutStopgaps(long[] base) {
            boolean[] forbidden = new boolean[problem.items().size()];
            for (int i = 0; i < forbidden.length; i++) {
                forbidden[i] = problem.items().get(i).item().stopgapHours().isPresent();
            }
            return Solver.solve(problem, base, allMusts(), forbidden);
        }
    }

    /** The worst case: the base it happens at and its cheapest solution, if it has one. */
    private record Headline(long[] base, Optional<Solver.Solution> solution, boolean bracketed) {}

    private static Headline headline(Workbench bench) {
        Outcomes.Bases worst = Outcomes.worst(bench.problem());
        return worst.bases().stream()
                .map(base -> new Headline(base, bench.solve(base, bench.allMusts()), worst.bracketed()))
                .max(Comparator.comparingLong(h -> h.solution().map(Solver.Solution::cents).orElse(Long.MAX_VALUE)))
                .orElseThrow();
    }

    private static Verdict verdict(Unit unit, Workbench bench, Headline headline) {
        if (headline.solution().isPresent()) {
            if (unit.availability() == Availability.ORDERABLE) {
                return Verdict.TO_ORDER;
            }
            return headline.solution().get().cents() == 0 ? Verdict.READY : Verdict.READY_ONCE_EQUIPPED;
        }
        return canTurnOut(bench, Outcomes.best(bench.problem()))
                ? Verdict.LOOK_CLOSER
                : Verdict.CANNOT_BE_MADE_READY;
    }

    private static boolean canTurnOut(Workbench bench, Outcomes.Bases bases) {
        return bases.bases().stream().anyMatch(base -> bench.solve(base, bench.allMusts()).isPresent());
    }

    private Finding finding(Unit unit, Needs needs, Workbench bench, Headline headline) {
        if (headline.solution().isPresent()) {
            Plan best = plan(bench.problem(), headline.solution().get());
            Optional<Plan> withoutStopgap = best.hasStopgap()
                    ? bench.solveWithoutStopgaps(headline.base()).map(s -> plan(bench.problem(), s))
                    : Optional.empty();
            return new Finding.Feasible(best, withoutStopgap);
        }
        List<Integer> rows = irreducible(bench, headline.base());
        List<Requirement> requirements =
                rows.stream().map(row -> needs.requirements().get(requirementOf(bench, row))).toList();
        var causes = new Causes(catalogue, new Assortment(catalogue, unit, needs), bench.problem(), headline.base());
        return new Finding.Infeasible(requirements, causes.of(rows));
    }

    private static int requirementOf(Workbench bench, int row) {
        return bench.problem().rows().get(row).requirement();
    }

    /** Drops must-haves one by one while the rest still cannot be met: what stays is irreducible. */
    private static List<Integer> irreducible(Workbench bench, long[] base) {
        boolean[] active = bench.allMusts();
        for (int i = active.length - 1; i >= 0; i--) {
            if (active[i]) {
                active[i] = false;
                if (bench.solve(base, active).isPresent()) {
                    active[i] = true;
                }
            }
        }
        List<Integer> rows = new ArrayList<>();
        for (int r = 0; r < bench.problem().rows().size(); r++) {
            Problem.Row row = bench.problem().rows().get(r);
            if (row.role() == Problem.Role.MUST && active[row.requirement()]) {
                rows.add(r);
            }
        }
        return rows;
    }

    private static Plan plan(Problem problem, Solver.Solution solution) {
        List<Plan.Line> lines = new ArrayList<>();
        for (int i = 0; i < problem.items().size(); i++) {
            int count = solution.counts()[i];
            if (count > 0) {
                Problem.Candidate candidate = problem.items().get(i);
                ItemId id = candidate.item().id();
                boolean stopgap = candidate.item().stopgapHours().isPresent();
                lines.add(new Plan.Line(id, count, candidate.price().times(count), stopgap));
            }
        }
        return new Plan(lines, solution.minutes());
    }

    private static List<Verify> verify(Workbench bench, Headline headline, Verdict verdict) {
        List<Problem.Piece> pieces = bench.problem().pieces();
        int flips = verdict == Verdict.LOOK_CLOSER ? fewestThatFlip(bench) : 0;
        List<Verify> verify = new ArrayList<>();
        for (int p = 0; p < pieces.size() && p < Integer.SIZE - 1; p++) {
            FeatureId feature = pieces.get(p).feature();
            boolean isFlip = (flips & (1 << p)) != 0;
            PriceRange saves = headline.solution().isPresent()
                    ? saving(bench, headline.solution().get(), 1 << p)
                    : PriceRange.ZERO;
            if (isFlip || !saves.isZero()) {
                verify.add(new Verify(feature, saves, isFlip));
            }
        }
        verify.sort(Comparator.comparing((Verify v) -> !v.flips())
                .thenComparing(v -> v.saves().high(), Comparator.reverseOrder())
                .thenComparing(Verify::feature));
        return verify;
    }

    private static PriceRange saving(Workbench bench, Solver.Solution headline, int mask) {
        Money worst = plan(bench.problem(), headline).price().middle();
        return Outcomes.bestOf(bench.problem(), mask).bases().stream()
                .flatMap(base -> bench.solve(base, bench.allMusts()).stream())
                .map(solution -> worst.minus(plan(bench.problem(), solution).price().middle()))
                .max(Comparator.naturalOrder())
                .filter(saving -> saving.cents() > 0)
                .map(saving -> new PriceRange(Money.ZERO, saving))
                .orElse(PriceRange.ZERO);
    }

    /** The smallest set of pieces which, if they turn out well, make the unit ready; as a bit mask. */
    private static int fewestThatFlip(Workbench bench) {
        int pieces = Math.min(bench.problem().pieces().size(), 6);
        for (int size = 1; size <= pieces; size++) {
            for (int mask = 1; mask < 1 << pieces; mask++) {
                if (Integer.bitCount(mask) == size && canTurnOut(bench, Outcomes.bestOf(bench.problem(), mask))) {
                    return mask;
                }
            }
        }
        return (1 << Math.min(bench.problem().pieces().size(), Integer.SIZE - 2)) - 1;
    }

    private static Score score(Needs needs, Workbench bench, Headline headline) {
        List<Requirement> met = new ArrayList<>();
        List<Requirement> unmet = new ArrayList<>();
        long weightMet = 0;
        long weightAll = 0;
        for (int r = 0; r < bench.problem().rows().size(); r++) {
            Problem.Row row = bench.problem().rows().get(r);
            if (row.role() == Problem.Role.WISH) {
                Requirement wish = needs.requirements().get(row.requirement());
                boolean holds = bench.problem().base()[r] >= row.bound();
                (holds ? met : unmet).add(wish);
                weightMet += holds ? wish.weight() : 0;
                weightAll += wish.weight();
            }
        }
        int percent = weightAll == 0 ? 100 : (int) (100 * weightMet / weightAll);
        int all = needs.musts().size();
        int mustsMet = headline.solution().isPresent() ? all : mostTogether(bench, headline.base());
        return new Score(mustsMet, all, percent, met, unmet);
    }

    /** How many must-haves hold together when each is kept, in the order asked, if it still can be. */
    private static int mostTogether(Workbench bench, long[] base) {
        boolean[] all = bench.allMusts();
        boolean[] kept = new boolean[all.length];
        int count = 0;
        for (int i = 0; i < all.length; i++) {
            if (all[i]) {
                kept[i] = true;
                if (bench.solve(base, kept).isPresent()) {
                    count++;
                } else {
                    kept[i] = false;
                }
            }
        }
        return count;
    }

    private PriceRange catchUp(Unit unit) {
        return unit.catchUp().stream()
                .flatMap(note -> catalogue.prices().findLater(note, unit.model().machineClass()).stream())
                .reduce(PriceRange.ZERO, PriceRange::plus);
    }

    private static Optional<Money> overBudget(Needs needs, ReadyPrice price, Verdict verdict) {
        if (!verdict.hasPlan()) {
            return Optional.empty();
        }
        return needs.budget()
                .map(budget -> price.middle().minus(budget))
                .filter(over -> over.cents() > 0);
    }
}
