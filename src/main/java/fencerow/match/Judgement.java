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
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What one unit comes to: the answers of its sections put together. Plan, reasons and the names of wishes cost more
 * than the answer and are worked out when first asked for. Immutable in effect; may be used from any thread.
 */
final class Judgement {
    private final Kind kind;
    private final int[] facts;
    private final Assortment assortment;
    private final List<Sections.Placed> sections;
    private final List<Section.Answer> answers;
    private final boolean feasible;
    private final boolean hopeful;
    private final int missed;
    private final PriceRange price;
    private final Wishes wishes;
    private volatile @Nullable List<Share> shares;
    private volatile @Nullable Plan plan;
    private volatile @Nullable Score score;
    private volatile @Nullable Finding finding;
    private volatile @Nullable List<Verify> verify;

    /**
     * Judges one unit.
     *
     * @param facts   for each feature of the catalogue the place of what is known of it in the lot
     * @param answers of each of its sections
     */
    Judgement(
            Kind kind,
            int[] facts,
            Assortment assortment,
            List<Sections.Placed> sections,
            List<Section.Answer> answers) {
        this.kind = kind;
        this.facts = facts;
        this.assortment = assortment;
        this.sections = sections;
        this.answers = answers;
        boolean can = true;
        boolean could = true;
        int missing = 0;
        PriceRange sum = PriceRange.ZERO;
        for (int a = 0; a < answers.size(); a++) {
            Section.Answer answer = answers.get(a);
            can &= answer.found().plan().isPresent();
            could &= answer.found().hopeful();
            missing += answer.found().missed();
            sum = answer.price().isZero() ? sum : sum.plus(answer.price());
        }
        this.feasible = can;
        this.hopeful = could && !can;
        this.missed = missing;
        this.price = can ? sum : PriceRange.ZERO;
        this.wishes = new Wishes(kind, facts);
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
        return answers.stream().anyMatch(answer -> answer.found().bracketed());
    }

    /** What the cheapest plan costs; nothing where there is none. */
    PriceRange price() {
        return price;
    }

    /** How many must-haves can be met together. */
    int mustsMet() {
        return wishes.mustsAll() - missed;
    }

    /** The weighted share of wishes met as the unit stands, 0 to 100. */
    int percent() {
        return wishes.percent();
    }

    /** The cheapest plan; empty where there is none. */
    Plan plan() {
        Plan known = plan;
        if (known == null) {
            known = feasible ? plan(planned()) : Plan.EMPTY;
            plan = known;
        }
        return known;
    }

    /** How well it suits. */
    Score score() {
        Score known = score;
        if (known == null) {
            known = wishes.score(missed, planned().counts());
            score = known;
        }
        return known;
    }

    /** All parts, in the order of their rows. */
    private List<Share> shares() {
        List<Share> known = shares;
        if (known == null) {
            known = IntStream.range(0, answers.size())
                    .boxed()
                    .flatMap(s -> sections.get(s).shares(answers.get(s)).stream())
                    .sorted(Comparator.comparingInt(share -> share.slice().rows()[0]))
                    .toList();
            shares = known;
        }
        return known;
    }

    /** How, or why not. */
    Finding finding() {
        Finding known = finding;
        if (known == null) {
            known = feasible ? new Finding.Feasible(plan(), withoutStopgap()) : infeasible();
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
     * What the cheapest plan costs when some must-haves are not asked for; empty where there is none.
     *
     * @param requirements their places in the needs
     */
    Optional<PriceRange> priceWithout(List<Integer> requirements) {
        PriceRange sum = PriceRange.ZERO;
        for (Share share : shares()) {
            List<Integer> own = share.own(requirements);
            Optional<Solver.Solution> solution = own.isEmpty() ? share.part().solution() : share.part().without(own);
            if (solution.isEmpty()) {
                return Optional.empty();
            }
            int[] places = share.slice().items();
            sum = sum.plus(solution.get().price(item -> kind.price(places[item])));
        }
        return Optional.of(sum);
    }

    /** How many of each item the plan has; none where there is no plan. */
    private Solver.Solution planned() {
        var all = Solver.Solution.nothing(kind.setup().items().count());
        for (int a = 0; feasible && a < answers.size(); a++) {
            all = all.with(answers.get(a).found().plan().orElseThrow(), sections.get(a).slice().items());
        }
        return all;
    }

    /** The plan of so many of each item. */
    private Plan plan(Solver.Solution all) {
        int[] counts = all.counts();
        List<Plan.Line> lines = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                Item item = kind.layout().items().get(i);
                PriceRange each = kind.price(i).times(counts[i]);
                lines.add(new Plan.Line(item.id(), counts[i], each, item.stopgapHours().isPresent()));
            }
        }
        return lines.isEmpty() ? Plan.EMPTY : new Plan(lines, all.minutes());
    }

    private Optional<Plan> withoutStopgap() {
        if (!plan().hasStopgap()) {
            return Optional.empty();
        }
        var all = Solver.Solution.nothing(kind.setup().items().count());
        for (Share share : shares()) {
            int[] places = share.slice().items();
            boolean[] forbidden = new boolean[places.length];
            for (int i = 0; i < places.length; i++) {
                forbidden[i] = kind.layout().items().get(places[i]).stopgapHours().isPresent();
            }
            Optional<Solver.Solution> own = share.part().withoutItems(forbidden);
            if (own.isEmpty()) {
                return Optional.empty();
            }
            all = all.with(own.get(), places);
        }
        return Optional.of(plan(all));
    }

    /** Of several parts that cannot be met, the one asked for first is told. */
    private Finding infeasible() {
        Share share = shares().stream()
                .filter(each -> each.part().solution().isEmpty())
                .findFirst()
                .orElseThrow();
        int[] places = share.slice().rows();
        int[] set = share.part().irreducible();
        long[] failing = share.part().failing(set);
        long[] headroom = kind.problem(facts).headroom();
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
        for (Share share : shares()) {
            Part part = share.part();
            int flips = hopeful && part.solution().isEmpty() ? part.fewestThatFlip() : 0;
            for (int p = 0; p < share.pieces().size() && p < Integer.SIZE - 2; p++) {
                boolean isFlip = (flips & (1 << p)) != 0;
                PriceRange saves = feasible ? saving(part, p) : PriceRange.ZERO;
                if (isFlip || !saves.isZero()) {
                    int feature = share.pieces().get(p).feature();
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
