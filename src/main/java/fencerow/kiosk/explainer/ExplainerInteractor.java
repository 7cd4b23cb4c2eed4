package fencerow.kiosk.explainer;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.GlossaryWord;
import fencerow.explainers.Inline;
import fencerow.explainers.Library;
import fencerow.explainers.Picture;
import fencerow.kiosk.explainer.ExplainerModel.DrawnFigure;
import fencerow.kiosk.explainer.ExplainerModel.PriceLine;
import fencerow.kiosk.explainer.ExplainerModel.Related;
import fencerow.kiosk.kit.OfferingTable;
import fencerow.kiosk.kit.Words;
import fencerow.quiz.Quiz;
import fencerow.stock.AddOn;
import fencerow.stock.Catalogue;
import fencerow.stock.PriceBook.ItemPrice;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.MachineClass;
import fencerow.terms.Offering;
import fencerow.terms.PriceRange;
import fencerow.terms.TopicId;
import fencerow.visit.Showroom;
import fencerow.visit.Workbook;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Puts an explainer together: its text, and what the program itself knows about the feature. */
final class ExplainerInteractor {
    private final Catalogue catalogue;
    private final Quiz quiz;
    private final Library library;
    private final Phrases phrases;
    private final Workbook workbook;

    ExplainerInteractor(Showroom showroom, Library library, Phrases phrases) {
        this.catalogue = showroom.catalogue();
        this.quiz = showroom.quiz();
        this.workbook = showroom.workbook();
        this.library = library;
        this.phrases = phrases;
    }

    /** @throws IllegalArgumentException if there is no explainer of the topic */
    ExplainerModel model(TopicId topic) {
        Explainer explainer = library.find(topic).orElseThrow(() -> new IllegalArgumentException(
                "there is no explainer on [" + topic + "] in language [" + library.language() + "]"));
        Optional<Feature> feature = catalogue.findFeature(new FeatureId(topic.value()));
        TradeWords words = new TradeWords(library.glossary().stream()
                .filter(word -> !word.topic().equals(Optional.of(topic)))
                .toList());
        List<Block> blocks = explainer.blocks().stream().map(words::link).toList();
        return new ExplainerModel(explainer.title(), explainer.summary(),
                texts().get("stop." + explainer.stop().id()), figures(topic), blocks,
                feature.map(this::offering).orElse(List.of()),
                feature.map(this::prices).orElse(List.of()),
                explainer.cautions().stream().map(id -> texts().get("caution." + id)).toList(),
                linked(explainer, words),
                explainer.related().stream().flatMap(this::related).toList(),
                explainer.quiz().filter(id -> quiz.questions().stream().anyMatch(each -> each.id().equals(id))),
                workbook.about(topic).stream()
                        .map(sheet -> new ExplainerModel.Sum(
                                sheet.id(), texts().get("work.calculation." + sheet.id() + ".ask")))
                        .toList());
    }

    private List<DrawnFigure> figures(TopicId topic) {
        Optional<Picture> with = library.pictures().of(topic);
        Optional<Picture> without = library.pictures().without(topic);
        boolean both = with.isPresent() && without.isPresent();
        return Stream.concat(
                        with.stream().map(each -> figure(each, topic, both ? "kiosk.topic.with" : "")),
                        without.stream().map(each -> figure(each, topic, "kiosk.topic.without")))
                .toList();
    }

    private DrawnFigure figure(Picture picture, TopicId topic, String caption) {
        Map<String, String> parts = new HashMap<>();
        for (String part : picture.drawing().parts()) {
            if (!part.equals(topic.value())) {
                library.find(new TopicId(part)).ifPresent(other -> parts.put(part, other.title()));
            }
        }
        return new DrawnFigure(picture.drawing(), caption.isEmpty() ? "" : texts().get(caption),
                texts().get(picture.altKey()), parts);
    }

    private Texts texts() {
        return phrases.texts();
    }

    /** Words linked by the text itself, and by us. */
    private List<GlossaryWord> linked(Explainer explainer, TradeWords words) {
        Stream<GlossaryWord> own = explainer.blocks().stream()
                .flatMap(ExplainerInteractor::runs)
                .flatMap(run -> run instanceof Inline.WordLink link
                        ? library.findWord(link.glossaryId()).stream()
                        : Stream.empty());
        return Stream.concat(own, words.linked().stream()).distinct().toList();
    }

    private static Stream<Inline> runs(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return paragraph.words().stream();
        }
        return block instanceof Block.Points points
                ? points.points().stream().flatMap(List::stream)
                : Stream.empty();
    }

    private Stream<Related> related(TopicId topic) {
        return library.find(topic).stream().map(each -> new Related(topic, each.title()));
    }

    private List<OfferingTable.Line> offering(Feature feature) {
        return Stream.of(MachineClass.values())
                .map(each -> {
                    Offering offering = feature.offeringOn(each);
                    return new OfferingTable.Line(
                            texts().get("class." + each.id()), offering, texts().get("offering." + offering.id()));
                })
                .toList();
    }

    private List<PriceLine> prices(Feature feature) {
        return catalogue.addOnsFor(feature.id()).stream().map(this::price).toList();
    }

    private PriceLine price(AddOn addOn) {
        Optional<String> order = spread(addOn, ItemPrice::order).map(phrases::range);
        Optional<String> later = spread(addOn, ItemPrice::later).map(phrases::range);
        List<String> parts = new ArrayList<>();
        order.ifPresent(range -> parts.add(texts().get("kiosk.topic.price-order", Map.of("range", range))));
        parts.add(later.map(range -> texts().get("kiosk.topic.price-later", Map.of("range", range)))
                .orElseGet(() -> texts().get("kiosk.topic.price-not-later")));
        String by = texts().get("kiosk.topic.fitted", Map.of(
                "fitter", texts().get("fitter." + addOn.by().id()),
                "low", addOn.fitting().low(), "high", addOn.fitting().high()));
        String stopgap = addOn.stopgapHours().isPresent()
                ? " " + texts().get("kiosk.topic.stopgap", Map.of("hours", addOn.stopgapHours().getAsInt()))
                : "";
        return new PriceLine(phrases.labels().item(addOn.id()), String.join(" ", parts), by + stopgap);
    }

    /** From the lowest to the highest price over all classes. */
    private Optional<PriceRange> spread(AddOn addOn, Function<ItemPrice, Optional<PriceRange>> when) {
        List<PriceRange> all = addOn.classes().stream()
                .flatMap(each -> catalogue.prices().findPrice(addOn.id(), each).stream())
                .flatMap(price -> when.apply(price).stream())
                .toList();
        return PriceRange.spanning(all);
    }

    /** How many words there are to read. */
    static int words(ExplainerModel model) {
        int words = Words.count(model.summary());
        for (Block block : model.blocks()) {
            words += runs(block).mapToInt(run -> Words.count(run.words())).sum();
        }
        return words;
    }
}
