package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random yards: features that only provide, add-ons with needs and exclusions, attachments for jobs, units. */
final class RandomYards {
    static final int FEATURES = 7;
    private static final int JOBS = 4;
    private final Random random;

    /** One yard with a unit and a shopper. */
    record Case(Catalogue catalogue, Unit unit, Needs needs) {}

    RandomYards(long seed) {
        this.random = new Random(seed);
    }

    Case next() {
        var yard = new Yard().shared("port-block");
        for (int f = 0; f < FEATURES; f++) {
            yard.feature("feature-" + f);
        }
        for (int f = 0; f < FEATURES; f++) {
            for (int alternative = random.nextInt(3); alternative > 0; alternative--) {
                List<Effect> gives = new ArrayList<>(List.of(Yard.gives("feature-" + f)));
                if (random.nextInt(4) == 0) {
                    gives.add(Yard.takes("port-block"));
                }
                String excluded = "kit-" + random.nextInt(FEATURES) + "-1";
                yard.addOn("kit-" + f + "-" + alternative, dollars(), gives, someNeeds(1), excluded);
            }
        }
        for (int job = 0; job < JOBS; job++) {
            for (int alternative = 1 + random.nextInt(3); alternative > 0; alternative--) {
                yard.attachment("tool-" + job + "-" + alternative, dollars(), "job-" + job,
                        Yard.LOADER_WORK, List.of(), someNeeds(2));
            }
        }
        return new Case(yard.catalogue(), unit("unit"), needs());
    }

    /** Needs of an item: features asked for whatever is mounted. */
    private List<Demand> someNeeds(int most) {
        List<Demand> needs = new ArrayList<>();
        for (int n = random.nextInt(most + 1); n > 0; n--) {
            needs.add(Yard.needs("feature-" + random.nextInt(FEATURES)));
        }
        return needs;
    }

    private long dollars() {
        return 100L * (1 + random.nextInt(40));
    }

    /** More units for the same yard. */
    List<Unit> units(int count) {
        List<Unit> units = new ArrayList<>();
        for (int u = 0; u < count; u++) {
            units.add(unit("unit-" + u));
        }
        return units;
    }

    private Unit unit(String id) {
        Yard.UnitMaker unit = Yard.unit();
        for (int f = 0; f < FEATURES; f++) {
            switch (random.nextInt(7)) {
                case 0 -> unit.fitted("feature-" + f);
                case 1 -> unit.unverified("feature-" + f);
                case 2 -> unit.never("feature-" + f);
                default -> {
                    // not there, and can be added where there is a kit
                }
            }
        }
        return unit.make(id);
    }

    private Needs needs() {
        List<Requirement> requirements = new ArrayList<>();
        for (int job = 0; job < JOBS; job++) {
            if (random.nextInt(3) > 0) {
                requirements.add(Yard.must(Yard.needs("does:job-" + job)));
            }
        }
        for (int f = 0; f < FEATURES; f++) {
            int kind = random.nextInt(5);
            if (kind == 0) {
                requirements.add(Yard.must(Yard.needs("feature-" + f)));
            } else if (kind == 1) {
                requirements.add(Yard.wish(Yard.needs("feature-" + f)));
            }
        }
        return Yard.needs(requirements.toArray(new Requirement[0]));
    }
}
