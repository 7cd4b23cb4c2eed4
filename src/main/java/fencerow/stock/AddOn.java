package fencerow.stock;

import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A way to give a tractor something when it is ordered or after purchase.
 *
 * @param fitting how long fitting it takes
 * @param by      who can fit it
 */
public record AddOn(
        ItemId id,
        Set<MachineClass> classes,
        int max,
        List<Effect> gives,
        List<Demand> needs,
        Set<ItemId> excludes,
        Fitting fitting,
        Fitter by,
        OptionalInt stopgapHours)
        implements Item {
    /** Copies the collections. */
    public AddOn {
        classes = Set.copyOf(classes);
        gives = List.copyOf(gives);
        needs = List.copyOf(needs);
        excludes = Set.copyOf(excludes);
    }

    /**
     * Hours of fitting, from a good day to a bad one.
     *
     * @param low  not negative
     * @param high at least {@code low}
     */
    public record Fitting(double low, double high) {
        /** @throws IllegalArgumentException if the hours are negative or low is above high */
        public Fitting {
            if (!(low >= 0 && high >= low)) {
                throw new IllegalArgumentException("fitting hours " + low + " to " + high
                        + " are no range; give low at least 0 and high no less");
            }
        }

        /** Half way, in whole minutes. */
        public int minutes() {
            return (int) Math.round((low + high) * 30);
        }
    }
}
