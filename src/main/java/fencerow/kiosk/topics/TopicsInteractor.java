package fencerow.kiosk.topics;

import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Search;
import fencerow.kiosk.topics.TopicsModel.Card;
import fencerow.kiosk.topics.TopicsModel.Shelf;
import fencerow.kiosk.topics.TopicsModel.Target;
import fencerow.stock.Catalogue;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Knows which topics lie where, and what to list for what is typed. */
final class TopicsInteractor {
    private static final int MOST_HITS = 24;

    private final Catalogue catalogue;
    private final Library library;
    private final Texts texts;
    private final Search search;

    TopicsInteractor(Catalogue catalogue, Library library, Texts texts, Search search) {
        this.catalogue = catalogue;
        this.library = library;
        this.texts = texts;
        this.search = search;
    }

    /** The core topics, then the stops that have topics, in walk-around order. */
    List<Shelf> shelves(Optional<Stop> chosen, boolean searching) {
        List<Shelf> shelves = new ArrayList<>();
        shelves.add(new Shelf("", texts.get("kiosk.topics.core"), chosen.isEmpty() && !searching, Place.Topics.FIRST));
        int number = 1;
        for (Stop stop : Stop.values()) {
            if (library.explainers().stream().anyMatch(each -> each.stop() == stop)) {
                boolean here = chosen.equals(Optional.of(stop)) && !searching;
                shelves.add(new Shelf(Integer.toString(number), texts.get("stop." + stop.id()), here,
                        new Place.Topics(Optional.of(stop), Optional.empty(), 0)));
                number++;
            }
        }
        return shelves;
    }

    /** The topics of a stop, core ones first; without a stop the core topics of the whole walk. */
    List<Card> cards(Optional<Stop> stop) {
        Comparator<Explainer> coreFirst = Comparator.comparing(each -> !isCore(each.topic()));
        return library.explainers().stream()
                .filter(each -> stop.map(wanted -> each.stop() == wanted).orElseGet(() -> isCore(each.topic())))
                .sorted(coreFirst.thenComparing(Explainer::stop))
                .map(TopicsInteractor::card)
                .toList();
    }

    private boolean isCore(TopicId topic) {
        return catalogue.findFeature(new FeatureId(topic.value())).map(Feature::core).orElse(false);
    }

    private static Card card(Explainer explainer) {
        return new Card(explainer.title(), explainer.summary(), new Target.Topic(explainer.topic()));
    }

    /** What is found for the words typed; empty as long as nothing is typed. Called in the background. */
    List<Card> found(String language, String query) {
        if (query.isBlank()) {
            return List.of();
        }
        return search.find(language, query).stream()
                .limit(MOST_HITS)
                .map(hit -> new Card(hit.title(), hit.excerpt(), switch (hit.kind()) {
                    case TOPIC -> new Target.Topic(new TopicId(hit.id()));
                    case WORD -> new Target.Word(hit.id());
                }))
                .toList();
    }
}
