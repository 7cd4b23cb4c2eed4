package fencerow.match;

import fencerow.needs.Because;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.AddOn;
import fencerow.stock.AskingPrice;
import fencerow.stock.Attachment;
import fencerow.stock.Availability;
import fencerow.stock.Catalogue;
import fencerow.stock.Condition;
import fencerow.stock.Fitter;
import fencerow.stock.Item;
import fencerow.stock.Model;
import fencerow.stock.PriceBook;
import fencerow.stock.PriceBook.ItemPrice;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Capability;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Effect;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.ModelId;
import fencerow.terms.Money;
import fencerow.terms.Offering;
import fencerow.terms.PriceRange;
import fencerow.terms.QuestionId;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import fencerow.terms.Stop;
import fencerow.terms.Threshold;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** A small invented yard that a test stocks with just what it needs. */
final class Yard {
    static final StateId LOADER_WORK = new StateId("loader-work");
    static final StateId PARKED = new StateId("parked");

    private final List<Feature> features = new ArrayList<>();
    private final List<Capability> capabilities = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();
    private final Map<ItemId, Map<MachineClass, ItemPrice>> prices = new HashMap<>();

    Yard feature(String id, Effect... gives) {
        features.add(new Feature(
                new FeatureId(id), Stop.REAR, false, List.of(), 1, offering(), List.of(gives), Map.of(), false));
        return this;
    }

    Yard kinds(String id, String... kinds) {
        features.add(new Feature(
                new FeatureId(id), Stop.REAR, false, List.of(kinds), 1, offering(), List.of(), Map.of(), false));
        return this;
    }

    private static Map<MachineClass, Offering> offering() {
        Map<MachineClass, Offering> offering = new EnumMap<>(MachineClass.class);
        for (MachineClass machineClass : MachineClass.values()) {
            offering.put(machineClass, Offering.EXTRA);
        }
        return offering;
    }

    Yard sum(String id, Dimension dimension, Figure... own) {
        capabilities.add(
                new Capability(new CapabilityId(id), dimension, Capability.Combine.SUM, List.of(own), 0));
        return this;
    }

    Yard shared(String id) {
        capabilities.add(
                new Capability(new CapabilityId(id), Dimension.COUNT, Capability.Combine.SUM, List.of(), 1));
        return this;
    }

    Yard best(String id, Dimension dimension) {
        capabilities.add(
                new Capability(new CapabilityId(id), dimension, Capability.Combine.MAX, List.of(), 0));
        return this;
    }

    Yard addOn(String id, long dollars, List<Effect> gives, List<Demand> needs, String... excludes) {
        return addOn(id, 1, OptionalInt.empty(), Fitter.ANY_SHOP, dollars, gives, needs, excludes);
    }

    Yard addOn(
            String id,
            int max,
            OptionalInt stopgapHours,
            Fitter by,
            long dollars,
            List<Effect> gives,
            List<Demand> needs,
            String... excludes) {
        var fitting = new AddOn.Fitting(1, 2);
        items.add(new AddOn(
                new ItemId(id), classes(), max, gives, needs, ids(excludes), fitting, by, stopgapHours));
        Optional<PriceRange> price = Optional.of(PriceRange.exactly(Money.ofDollars(dollars)));
        price(id, by == Fitter.FACTORY ? new ItemPrice(price, Optional.empty()) : new ItemPrice(price, price));
        return this;
    }

    Yard attachment(String id, long dollars, String job, StateId state, List<Effect> gives, List<Demand> needs) {
        items.add(new Attachment(
                new ItemId(id),
                classes(),
                Set.of(new JobId(job)),
                state,
                new Amount(Dimension.MASS, 100),
                new Amount(Dimension.LENGTH, 1.5),
                gives,
                needs,
                Set.of(),
                OptionalInt.empty()));
        Optional<PriceRange> price = Optional.of(PriceRange.exactly(Money.ofDollars(dollars)));
        price(id, new ItemPrice(Optional.empty(), price));
        return this;
    }

    private void price(String id, ItemPrice price) {
        Map<MachineClass, ItemPrice> all = new EnumMap<>(MachineClass.class);
        classes().forEach(machineClass -> all.put(machineClass, price));
        prices.put(new ItemId(id), all);
    }

    /** What putting right something noted on a used machine costs. */
    Yard catchUp(String note, long low, long high) {
        return priced(note, Optional.empty(), Optional.of(PriceRange.ofDollars(low, high)));
    }

    /** Other prices than one known price, bought or fitted afterwards. */
    Yard priced(String item, Optional<PriceRange> order, Optional<PriceRange> later) {
        price(item, new ItemPrice(order, later));
        return this;
    }

    /** The add-on is made for some classes of machine only. */
    Yard madeFor(String addOn, MachineClass... machineClasses) {
        items.replaceAll(item -> item instanceof AddOn any && any.id().value().equals(addOn)
                ? new AddOn(any.id(), Set.of(machineClasses), any.max(), any.gives(), any.needs(), any.excludes(),
                        any.fitting(), any.by(), any.stopgapHours())
                : item);
        return this;
    }

    private static Set<ItemId> ids(String... ids) {
        return Set.copyOf(List.of(ids).stream().map(ItemId::new).toList());
    }

    private static Set<MachineClass> classes() {
        return EnumSet.allOf(MachineClass.class);
    }

    Catalogue catalogue() {
        return new Catalogue(features, capabilities, items, List.of(), new PriceBook(prices));
    }

    Matcher matcher() {
        return new Matcher(catalogue());
    }

    static Effect gives(String of) {
        return Effect.one(new CapabilityId(of));
    }

    static Effect takes(String of) {
        return new Effect(new CapabilityId(of), Amount.count(-1), Set.of());
    }

    static Effect kilograms(String of, double kilograms, StateId... in) {
        return new Effect(new CapabilityId(of), new Amount(Dimension.MASS, kilograms), Set.of(in));
    }

    static Effect metres(String of, double metres) {
        return new Effect(new CapabilityId(of), new Amount(Dimension.LENGTH, metres), Set.of());
    }

    static Demand needs(String of) {
        return Demand.flag(new CapabilityId(of));
    }

    static Demand atLeast(String of, Amount amount, StateId in) {
        return new Demand(new CapabilityId(of), Relation.AT_LEAST, Threshold.of(amount), in);
    }

    static Demand atMost(String of, Amount amount, StateId in) {
        return new Demand(new CapabilityId(of), Relation.AT_MOST, Threshold.of(amount), in);
    }

    static Requirement must(Demand demand) {
        return requirement(demand, true);
    }

    static Requirement wish(Demand demand) {
        return requirement(demand, false);
    }

    private static Requirement requirement(Demand demand, boolean must) {
        var because = new Because(new QuestionId("asked"), Optional.empty(), Optional.empty());
        return new Requirement(demand.of().value() + "/" + demand.relation().id(), demand, must, 1, because);
    }

    static Needs needs(Requirement... requirements) {
        return new Needs(List.of(requirements), Set.of(), Set.of(), Optional.empty(), OptionalDouble.empty());
    }

    /** A unit as a test needs it. */
    static final class UnitMaker {
        private final Map<Figure, Amount> figures = new EnumMap<>(Figure.class);
        private final Map<FeatureId, Offering> offering = new HashMap<>();
        private final Map<FeatureId, Integer> limits = new HashMap<>();
        private final Map<FeatureId, Fact> facts = new HashMap<>();
        private final List<ItemId> bundled = new ArrayList<>();
        private final List<ItemId> catchUp = new ArrayList<>();
        private Optional<Model> model = Optional.empty();
        private Availability availability = Availability.IN_STOCK;
        private Condition condition = Condition.USED;
        private long dollars = 15000;

        /** Of the same model as another. */
        UnitMaker like(Unit other) {
            model = Optional.of(other.model());
            return this;
        }

        UnitMaker asNew() {
            condition = Condition.NEW;
            return this;
        }

        UnitMaker asking(long dollars) {
            this.dollars = dollars;
            return this;
        }

        UnitMaker worn(String note) {
            catchUp.add(new ItemId(note));
            return this;
        }

        UnitMaker known(String feature, Fact fact) {
            facts.put(new FeatureId(feature), fact);
            return this;
        }

        UnitMaker figure(Figure figure, double si) {
            figures.put(figure, new Amount(figure.dimension(), si));
            return this;
        }

        UnitMaker never(String feature) {
            offering.put(new FeatureId(feature), Offering.NEVER);
            return this;
        }

        UnitMaker factoryOnly(String feature) {
            offering.put(new FeatureId(feature), Offering.FACTORY_ONLY);
            return this;
        }

        UnitMaker limit(String feature, int most) {
            limits.put(new FeatureId(feature), most);
            return this;
        }

        UnitMaker fitted(String feature) {
            facts.put(new FeatureId(feature), Fact.fitted());
            return this;
        }

        UnitMaker unverified(String feature) {
            facts.put(new FeatureId(feature), new Fact.Unverified(List.of(Fact.absent(), Fact.fitted())));
            return this;
        }

        UnitMaker bundled(String attachment) {
            bundled.add(new ItemId(attachment));
            return this;
        }

        UnitMaker orderable() {
            availability = Availability.ORDERABLE;
            return this;
        }

        Unit make() {
            return make("unit-1");
        }

        Unit make(String id) {
            Model own = model.orElseGet(() -> new Model(
                    new ModelId("model"),
                    "Invented",
                    "One",
                    MachineClass.SMALL,
                    "standard",
                    figures,
                    Map.of(),
                    offering,
                    limits));
            Money nothing = Money.ZERO;
            return new Unit(
                    new UnitId(id),
                    own,
                    condition,
                    OptionalInt.of(2020),
                    OptionalInt.of(400),
                    availability,
                    availability == Availability.ORDERABLE ? 60 : 0,
                    new AskingPrice(Money.ofDollars(dollars), Optional.empty(), nothing, nothing, nothing),
                    facts,
                    Set.copyOf(bundled),
                    catchUp);
        }
    }

    static UnitMaker unit() {
        return new UnitMaker();
    }
}
