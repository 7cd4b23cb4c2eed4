package fencerow.match;

import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.variables.IntVar;

/** The planner's instances put to a general constraint solver, choco-solver: the outside it is held against. */
final class GeneralSolver {
    private final Model model = new Model();
    private final IntVar price;

    private GeneralSolver(Setup setup, long[] headroom) {
        Setup.Items items = setup.items();
        IntVar[] counts = new IntVar[items.count()];
        int[] cents = new int[counts.length];
        int most = 1;
        for (int i = 0; i < counts.length; i++) {
            counts[i] = model.intVar("x" + i, 0, items.most()[i]);
            cents[i] = Math.toIntExact(items.cents()[i]);
            most += cents[i] * items.most()[i];
        }
        for (int r = 0; r < headroom.length; r++) {
            Setup.Row row = setup.rows().get(r);
            int[] change = LongStream.range(0, counts.length)
                    .mapToInt(i -> Math.toIntExact(row.change().at((int) i)))
                    .toArray();
            Constraint holds = model.scalar(counts, change, ">=", Math.toIntExact(-headroom[r]));
            if (row.role() == Setup.Role.NEED) {
                model.ifThen(model.arithm(counts[row.whose()], ">", 0), holds);
            } else {
                holds.post();
            }
        }
        for (int i = 0; i < counts.length; i++) {
            for (int j : items.excludes()[i]) {
                model.or(model.arithm(counts[i], "=", 0), model.arithm(counts[j], "=", 0)).post();
            }
        }
        this.price = model.intVar("price", 0, most);
        model.scalar(counts, cents, "=", price).post();
    }

    /** The least price in cents with every must-have; empty if there is no way. */
    static OptionalLong cheapest(Setup setup, long[] headroom) {
        var general = new GeneralSolver(setup, headroom);
        Solution best = general.model.getSolver().findOptimalSolution(general.price, false);
        return best == null ? OptionalLong.empty() : OptionalLong.of(best.getIntVal(general.price));
    }

    /** Whether there is a way with every must-have for no more than so many cents. */
    static boolean isPossibleFor(Setup setup, long[] headroom, long cents) {
        var general = new GeneralSolver(setup, headroom);
        general.model.arithm(general.price, "<=", Math.toIntExact(cents)).post();
        return general.model.getSolver().solve();
    }
}
