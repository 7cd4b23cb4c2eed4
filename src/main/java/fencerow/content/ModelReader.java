package fencerow.content;

import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import fencerow.terms.MachineClass;
import fencerow.terms.ModelId;
import fencerow.terms.Offering;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads {@code models.yaml}. */
final class ModelReader {
    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2100;
    private static final Trim[] TRIMS = {new Trim("economy"), new Trim("standard"), new Trim("deluxe")};

    private final Ids ids;
    private final Map<String, Feature> features;
    private final FigureCheck figureCheck;

    ModelReader(Ids ids, Map<String, Feature> features, FigureCheck figureCheck) {
        this.ids = ids;
        this.features = features;
        this.figureCheck = figureCheck;
    }

    private record Trim(String word) {}

    /** The years in which a model was made. */
    record Years(OptionalInt from, OptionalInt to) {
        boolean hold(int year) {
            return (from.isEmpty() || year >= from.getAsInt()) && (to.isEmpty() || year <= to.getAsInt());
        }
    }

    /** A model and what of its record is only needed to check stock. */
    record Made(Model model, Years years) {}

    Map<String, Made> read(YamlNode top) {
        Map<String, Made> all = new LinkedHashMap<>();
        for (YamlNode.Entry entry : top.entries()) {
            int before = top.problems().count();
            YamlMap map = entry.value().map(
                    "maker", "name", "class", "trim", "years", "figures", "standard", "offering", "limits");
            String maker = map.text("maker");
            String name = map.text("name");
            MachineClass machineClass = map.choice("class", MachineClass.values(), MachineClass::id);
            String trim = map.choice("trim", TRIMS, Trim::word).word();
            Years years = years(map);
            Map<Figure, Amount> figures = figures(map, entry.place());
            Map<FeatureId, Integer> limits = limits(map);
            Map<FeatureId, Fact> standard = standard(map);
            Map<FeatureId, Offering> offering = offering(map);
            top.problems()
                    .make(entry.place(), before, () -> new Model(new ModelId(entry.key()), maker, name, machineClass,
                            trim, figures, standard, offering, limits))
                    .ifPresent(model -> all.put(entry.key(), new Made(model, years)));
        }
        return all;
    }

    private static Years years(YamlMap map) {
        if (!map.has("years")) {
            return new Years(OptionalInt.empty(), OptionalInt.empty());
        }
        YamlMap years = map.map("years", "from", "to");
        var read = new Years(
                years.findWhole("from", FIRST_YEAR, LAST_YEAR), years.findWhole("to", FIRST_YEAR, LAST_YEAR));
        if (read.from().isPresent() && read.to().isPresent() && read.from().getAsInt() > read.to().getAsInt()) {
            map.problems().error(years.place(), "the first year comes after the last", "swap them");
        }
        return read;
    }

    private Map<Figure, Amount> figures(YamlMap map, Place model) {
        String[] names = Arrays.stream(Figure.values()).map(Figure::id).toArray(String[]::new);
        YamlMap written = map.map("figures", names);
        Map<Figure, Amount> figures = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            if (written.has(figure.id())) {
                figures.put(figure, written.amount(figure.id(), figure.dimension()));
            } else if (written.lacks(figure.id())) {
                map.problems().error(written.place(), "the figure [" + figure.id() + "] is missing",
                        "add it from the data sheet");
            }
        }
        figureCheck.check(model, written, figures);
        return figures;
    }

    private Map<FeatureId, Fact> standard(YamlMap map) {
        Map<FeatureId, Fact> standard = new HashMap<>();
        for (YamlNode.Entry entry : known(map, "standard")) {
            Optional<Feature> feature = Optional.ofNullable(features.get(entry.key()));
            String text = entry.value().text();
            feature.ifPresent(it -> FactReader.read(it, text)
                    .filter(fact -> !(fact instanceof Fact.Unverified))
                    .ifPresentOrElse(
                            fact -> standard.put(it.id(), fact),
                            () -> entry.value().error("[" + text + "] does not say what of [" + it.id()
                                    + "] comes with it", it.kinds().isEmpty()
                                    ? "write yes, no or a count up to " + it.most()
                                    : "write no or one of " + String.join(", ", it.kinds()))));
        }
        return standard;
    }

    private Map<FeatureId, Offering> offering(YamlMap map) {
        Map<FeatureId, Offering> offering = new HashMap<>();
        for (YamlNode.Entry entry : known(map, "offering")) {
            offering.put(new FeatureId(entry.key()), entry.value().choice(Offering.values(), Offering::id));
        }
        return offering;
    }

    private Map<FeatureId, Integer> limits(YamlMap map) {
        Map<FeatureId, Integer> limits = new HashMap<>();
        for (YamlNode.Entry entry : known(map, "limits")) {
            int most = Optional.ofNullable(features.get(entry.key())).map(Feature::most).orElse(99);
            limits.put(new FeatureId(entry.key()), entry.value().whole(0, most));
        }
        return limits;
    }

    private Iterable<YamlNode.Entry> known(YamlMap map, String key) {
        return map.entries(key).stream()
                .filter(entry -> ids.require(entry.key(), entry.place(), Kind.FEATURE))
                .toList();
    }
}
