package fencerow.match;

import fencerow.needs.Requirement;
import fencerow.stock.Item;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What one problem comes to, whichever unit it stands for: its parts' answers put together. Reasons cost more than the
 * answer and are worked out when first asked for. Immutable in effect; may be used from any thread.
 */
final class Judgement {
    private final Kind kind;
    private final Assortment assortment;
    private final Problem problem;
    private final List<Share> shares;
    private final boolean feasible;
    private final boolean hopeful;
    private final Plan plan;
    private final Score score;
    private volatile @Nullable Finding finding;
    private volatile @Nullable List<Verify> verify;

    /**
     * Judges one problem.
     *
     * @param assortment of any unit the problem stands for
     * @param shares     its parts, in the order of their rows
     */
    Judgement(Kind kind, Problem problem, Assortment assortment, List<Share> shares) {
        this.kind = kind;
        this.assortment = assortment;
        this.problem = problem;
        this.shares = List.copyOf(shares);
        boolean can = true;
        boolean could = true;
        int missed = 0;
        for (Share share : shares) {
            Part part = share.part();
            can &= part.solution().isPresent();
            could &= part.isHopeful();
            missed += part.mustsAll() - part.mustsMet();
        }
        this.feasible = can;
        this.hopeful = could && !can;
        int[] planned = can ? counts(solutions()) : new int[problem.setup().items().count()];
        this.plan = can ? plan(planned, solutions()) : Plan.EMPTY;
        this.score = new Wishes(kind, problem, planned).score(missed);
    }

    /** Whether every must-have can be met, every unverified piece at its worst. */
    boolean isFeasible() {
        return feasible;
    }

    /** Whether it cannot as known, but some outcome of unverified pieces could. */
    boolean isHopeful() {
        return hopeful;
    }

    /** Whether bounds had to stand for too many unverified pieces. */
    boolean isBracketed() {
        return shares.stream().anyMatch(share -> share.part().isBracketed());
    }

    /** The cheapest plan; empty where there is none. */
    Plan plan() {
        return plan;
    }

    /** How well it suits. */
    Score score() {
        return score;
    }

    /** How, or why not. */
    Finding finding() {
        Finding known = finding;
        if (known == null) {
            known = feasible ? new Finding.Feasible(plan, withoutStopgap()) : infeasible();
            finding = known;
        }
        return known;
    }

    /** Unverified pieces that matter: those the verdict hangs on first, then most money first. */
    List<Verify> verify() {
        List<Verify> known = verify;
        if (known == null) {
            known = List.copyOf(findVerify());
            verify = known;
        }
        return known;
    }

    /**
     * The cheapest plan when some must-haves are not asked for.
     *
     * @param requirements their places in the needs
     */
    Optional<Plan> without(List<Integer> requirements) {
        List<Optional<Solver.Solution>> solutions = new ArrayList<>();
        for (Share share : shares) {
            List<Integer> own = share.own(requirements);
            solutions.add(own.isEmpty() ? share.part().solution() : share.part().without(own));
        }
        return together(solutions);
    }

    /** The plan that the solutions of the shares come to; empty where one has none. */
    private Optional<Plan> together(List<Optional<Solver.Solution>> solutions) {
        return solutions.stream().allMatch(Optional::isPresent)
                ? Optional.of(plan(counts(solutions), solutions))
                : Optional.empty();
    }

    private List<Optional<Solver.Solution>> solutions() {
        return shares.stream().map(share -> share.part().solution()).toList();
    }

    /** How many of each item the solutions of the shares, all present, come to together. */
    private int[] counts(List<Optional<Solver.Solution>> solutions) {
        int[] counts = new int[problem.setup().items().count()];
        for (int s = 0; s < shares.size(); s++) {
            Solver.Solution solution = solutions.get(s).orElseThrow();
            int[] places = shares.get(s).slice().items();
            for (int i = 0; i < places.length; i++) {
                counts[places[i]] = solution.counts()[i];
            }
        }
        return counts;
    }

    /** The plan of so many of each item. */
    private Plan plan(int[] counts, List<Optional<Solver.Solution>> solutions) {
        int minutes = solutions.stream().mapToInt(each -> each.orElseThrow().minutes()).sum();
        List<Plan.Line> lines = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                Item item = kind.layout().items().get(i);
                PriceRange price = assortment.findPrice(item).orElseThrow().times(counts[i]);
                lines.add(new Plan.Line(item.id(), counts[i], price, item.stopgapHours().isPresent()));
            }
        }
        return lines.isEmpty() ? Plan.EMPTY : new Plan(lines, minutes);
    }

    private Optional<Plan> withoutStopgap() {
        if (!plan.hasStopgap()) {
            return Optional.empty();
        }
        List<Optional<Solver.Solution>> solutions = new ArrayList<>();
        for (Share share : shares) {
            int[] places = share.slice().items();
            boolean[] forbidden = new boolean[places.length];
            for (int i = 0; i < places.length; i++) {
                forbidden[i] = kind.layout().items().get(places[i]).stopgapHours().isPresent();
            }
            solutions.add(share.part().withoutItems(forbidden));
        }
        return together(solutions);
    }

    /** Of several parts that cannot be met, the one asked for first is told. */
    private Finding infeasible() {
        Share share = shares.stream()
                .filter(each -> each.part().solution().isEmpty())
                .findFirst()
                .orElseThrow();
        int[] places = share.slice().rows();
        int[] set = share.part().irreducible();
        long[] failing = share.part().failing(set);
        long[] headroom = problem.headroom().clone();
        for (int r = 0; r < places.length; r++) {
            headroom[places[r]] = failing[r];
        }
        List<Integer> rows = Arrays.stream(set)
                .mapToObj(must -> share.slice().musts()[must])
                .flatMap(must -> kind.layout().rowsOf(must).stream())
                .toList();
        List<Requirement> requirements = Arrays.stream(set)
                .mapToObj(must -> kind.layout().needs().requirements().get(share.slice().musts()[must]))
                .toList();
        return new Finding.Infeasible(requirements, new Causes(assortment, kind, headroom).of(rows));
    }

    private List<Verify> findVerify() {
        List<Verify> found = new ArrayList<>();
        for (Share share : shares) {
            Part part = share.part();
            int flips = hopeful && part.solution().isEmpty() ? part.fewestThatFlip() : 0;
            for (int p = 0; p < part.pieces().size() && p < Integer.SIZE - 2; p++) {
                boolean isFlip = (flips & (1 << p)) != 0;
                PriceRange saves = feasible ? saving(part, p) : PriceRange.ZERO;
                if (isFlip || !saves.isZero()) {
                    int feature = share.slice().problem().pieces().get(p).feature();
                    found.add(new Verify(kind.layout().index().features().get(feature).id(), saves, isFlip));
                }
            }
        }
        found.sort(Comparator.comparing((Verify v) -> !v.flips())
                .thenComparing(v -> v.saves().high(), Comparator.reverseOrder())
                .thenComparing(Verify::feature));
        return found;
    }

    /** What the plan costs less with the piece at its best and all others at their worst. */
    private static PriceRange saving(Part part, int piece) {
        long now = part.solution().map(Solver.Solution::cents).orElse(0L);
        return part.centsWithBest(piece)
                .map(cents -> new Money(now - cents))
                .filter(saves -> saves.cents() > 0)
                .map(saves -> new PriceRange(Money.ZERO, saves))
                .orElse(PriceRange.ZERO);
    }
}
