package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What one problem comes to, whichever unit it stands for: the cheapest plan in the worst case, or whether there is
 * hope, and how many must-haves hold. Reasons cost more than the answer and are worked out when first asked for.
 * Immutable in effect; may be used from any thread.
 */
final class Judgement {
    /** Up to so many unverified pieces, every set of them is tried for the smallest that decides. */
    private static final int MOST_IN_ALL_SETS = 12;

    private final Problem problem;
    private final Needs needs;
    private final Assortment assortment;
    private final List<long[]> worstBases;
    private final Optional<Solver.Solution> solution;
    private final boolean bracketed;
    private final boolean hopeful;
    private final Plan plan;
    private final Score score;
    private volatile @Nullable Finding finding;
    private volatile @Nullable List<Verify> verify;

    private Judgement(Problem problem, Needs needs, Assortment assortment) {
        this.problem = problem;
        this.needs = needs;
        this.assortment = assortment;
        Outcomes.Bases worst = Outcomes.worst(problem);
        this.worstBases = worst.bases();
        this.bracketed = worst.bracketed();
        this.solution = atWorst(allMusts());
        this.hopeful = solution.isEmpty() && canTurnOut(Outcomes.best(problem));
        this.plan = solution.map(this::plan).orElse(Plan.EMPTY);
        this.score = new Scoring(problem, needs, this::isFeasibleWith).score(solution.isPresent());
    }

    /**
     * Judges one problem.
     *
     * @param assortment of any unit the problem stands for
     */
    static Judgement of(Problem problem, Needs needs, Assortment assortment) {
        return new Judgement(problem, needs, assortment);
    }

    /** Whether every must-have can be met, every unverified piece at its worst. */
    boolean isFeasible() {
        return solution.isPresent();
    }

    /** Whether it cannot as known, but some outcome of unverified pieces could. */
    boolean isHopeful() {
        return hopeful;
    }

    /** Whether bounds had to stand for too many unverified pieces. */
    boolean isBracketed() {
        return bracketed;
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
            known = solution.isPresent() ? feasible() : infeasible();
            finding = known;
        }
        return known;
    }

    /** Unverified pieces that matter, most money first. */
    List<Verify> verify() {
        List<Verify> known = verify;
        if (known == null) {
            known = List.copyOf(findVerify());
            verify = known;
        }
        return known;
    }

    private boolean[] allMusts() {
        boolean[] active = new boolean[needs.requirements().size()];
        for (int i = 0; i < active.length; i++) {
            active[i] = needs.requirements().get(i).must();
        }
        return active;
    }

    private Optional<Solver.Solution> solve(long[] atBase, boolean[] active) {
        return Solver.solve(problem.setup(), atBase, active);
    }

    /** The cheapest solution at the base where it costs most; empty where some base has none. */
    private Optional<Solver.Solution> atWorst(boolean[] active) {
        return atWorst(active, new boolean[problem.setup().items().size()]);
    }

    /** The same without the items for which {@code forbidden} holds. */
    private Optional<Solver.Solution> atWorst(boolean[] active, boolean[] forbidden) {
        Optional<Solver.Solution> worst = Optional.empty();
        for (long[] each : worstBases) {
            Optional<Solver.Solution> found = Solver.solve(problem.setup(), each, active, forbidden);
            if (found.isEmpty()) {
                return found;
            }
            if (worst.isEmpty() || found.get().cents() > worst.get().cents()) {
                worst = found;
            }
        }
        return worst;
    }

    private boolean isFeasibleWith(boolean[] active) {
        return atWorst(active).isPresent();
    }

    /**
     * The cheapest plan when one must-have is not asked for.
     *
     * @param requirement its place in the needs
     */
    Optional<Plan> without(int requirement) {
        boolean[] active = allMusts();
        active[requirement] = false;
        return atWorst(active).map(this::plan);
    }

    private boolean canTurnOut(Outcomes.Bases bases) {
        return bases.bases().stream().anyMatch(each -> solve(each, allMusts()).isPresent());
    }

    private Finding feasible() {
        if (!plan.hasStopgap()) {
            return new Finding.Feasible(plan, Optional.empty());
        }
        List<Setup.Candidate> items = problem.setup().items();
        boolean[] forbidden = new boolean[items.size()];
        for (int i = 0; i < forbidden.length; i++) {
            forbidden[i] = items.get(i).item().stopgapHours().isPresent();
        }
        return new Finding.Feasible(plan, atWorst(allMusts(), forbidden).map(this::plan));
    }

    private Finding infeasible() {
        boolean[] active = irreducible();
        List<Integer> rows = IntStream.range(0, problem.setup().rows().size())
                .filter(r -> problem.setup().rows().get(r).role() == Setup.Role.MUST)
                .filter(r -> active[problem.setup().rows().get(r).requirement()])
                .boxed()
                .toList();
        long[] base = worstBases.stream()
                .filter(each -> solve(each, active).isEmpty())
                .findFirst()
                .orElse(problem.base());
        List<Requirement> requirements = rows.stream()
                .map(row -> needs.requirements().get(problem.setup().rows().get(row).requirement()))
                .toList();
        return new Finding.Infeasible(requirements, new Causes(assortment, problem.setup(), base).of(rows));
    }

    /** Drops must-haves one by one while the rest still cannot be met: what stays is irreducible. */
    private boolean[] irreducible() {
        boolean[] active = allMusts();
        for (int i = active.length - 1; i >= 0; i--) {
            if (active[i]) {
                active[i] = false;
                if (isFeasibleWith(active)) {
                    active[i] = true;
                }
            }
        }
        return active;
    }

    private Plan plan(Solver.Solution found) {
        List<Plan.Line> lines = new ArrayList<>();
        for (int i = 0; i < found.counts().length; i++) {
            int count = found.counts()[i];
            if (count > 0) {
                Setup.Candidate candidate = problem.setup().items().get(i);
                ItemId id = candidate.item().id();
                boolean stopgap = candidate.item().stopgapHours().isPresent();
                lines.add(new Plan.Line(id, count, candidate.price().times(count), stopgap));
            }
        }
        return new Plan(lines, found.minutes());
    }

    private List<Verify> findVerify() {
        List<Problem.Piece> pieces = problem.pieces();
        int flips = hopeful ? fewestThatFlip() : 0;
        List<Verify> found = new ArrayList<>();
        for (int p = 0; p < pieces.size() && p < Integer.SIZE - 1; p++) {
            FeatureId feature = pieces.get(p).feature();
            boolean isFlip = (flips & (1 << p)) != 0;
            PriceRange saves = solution.isPresent() ? saving(1 << p) : PriceRange.ZERO;
            if (isFlip || !saves.isZero()) {
                found.add(new Verify(feature, saves, isFlip));
            }
        }
        found.sort(Comparator.comparing((Verify v) -> !v.flips())
                .thenComparing(v -> v.saves().high(), Comparator.reverseOrder())
                .thenComparing(Verify::feature));
        return found;
    }

    /** What the plan costs less with the pieces of the mask at their best and all others at their worst. */
    private PriceRange saving(int mask) {
        Money headline = plan.price().middle();
        return Outcomes.bestOf(problem, mask).bases().stream()
                .map(each -> solve(each, allMusts()).map(this::plan).map(Plan::price).map(PriceRange::middle))
                .map(price -> price.map(headline::minus).orElse(Money.ZERO))
                .min(Comparator.naturalOrder())
                .filter(saves -> saves.cents() > 0)
                .map(saves -> new PriceRange(Money.ZERO, saves))
                .orElse(PriceRange.ZERO);
    }

    /** The smallest set of pieces which, if they turn out well, make the unit ready; as a bit mask. */
    private int fewestThatFlip() {
        int pieces = Math.min(problem.pieces().size(), Integer.SIZE - 2);
        int largest = pieces <= MOST_IN_ALL_SETS ? Math.min(pieces, 6) : 0;
        for (int size = 1; size <= largest; size++) {
            for (int mask = 1; mask < 1 << pieces; mask++) {
                if (Integer.bitCount(mask) == size && canTurnOut(Outcomes.bestOf(problem, mask))) {
                    return mask;
                }
            }
        }
        return shrunk((1 << pieces) - 1);
    }

    /** Too many pieces to try all sets: leaves out whatever can stay at its worst. */
    private int shrunk(int all) {
        int mask = all;
        for (int p = 0; p < problem.pieces().size() && p < Integer.SIZE - 2; p++) {
            int without = mask & ~(1 << p);
            if (canTurnOut(Outcomes.bestOf(problem, without))) {
                mask = without;
            }
        }
        return mask;
    }
}
