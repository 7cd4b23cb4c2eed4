package fencerow.sizing.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All calculations, by topic in the order of the screen. */
public final class Calculations {
    private static final List<Calculation> ALL = gather();

    private Calculations() {}

    /** Every calculation. */
    public static List<Calculation> all() {
        return ALL;
    }

    /** Those of one topic. */
    public static List<Calculation> of(Topic topic) {
        return ALL.stream().filter(calculation -> calculation.topic() == topic).toList();
    }

    /** The one with this id. */
    public static Optional<Calculation> find(String id) {
        return ALL.stream().filter(calculation -> calculation.id().equals(id)).findFirst();
    }

    /**
     * The one with this id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Calculation get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no calculation [" + id + "]; there are "
                + ALL.stream().map(Calculation::id).toList()));
    }

    private static List<Calculation> gather() {
        List<Calculation> all = new ArrayList<>();
        all.addAll(WorkCalculations.all());
        all.addAll(LoaderCalculations.all());
        all.addAll(BalanceCalculations.all());
        all.addAll(UnladenCalculations.all());
        all.addAll(TireCalculations.all());
        all.addAll(PowerCalculations.all());
        all.addAll(HydraulicCalculations.all());
        all.addAll(HitchCalculations.all());
        all.addAll(HaulingCalculations.all());
        all.addAll(SnowCalculations.all());
        all.addAll(FitCalculations.all());
        all.addAll(MoneyCalculations.all());
        all.addAll(UsedCalculations.all());
        return List.copyOf(all);
    }
}
