package fencerow.kiosk.topics;

import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.topics.TopicsModel.Card;
import fencerow.kiosk.topics.TopicsModel.Shelf;
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

/** Knows which topics lie where. */
final class TopicsInteractor {
    private final Catalogue catalogue;
    private final Library library;
    private final Texts texts;

    TopicsInteractor(Catalogue catalogue, Library library, Texts texts) {
        this.catalogue = catalogue;
        this.library = library;
        this.texts = texts;
    }

    /** The core topics, then the stops that have topics, in walk-around order. */
    List<Shelf> shelves(Optional<Stop> chosen) {
        List<Shelf> shelves = new ArrayList<>();
        shelves.add(new Shelf("", texts.get("kiosk.topics.core"), chosen.isEmpty(), Place.Topics.FIRST));
        int number = 1;
        for (Stop stop : Stop.values()) {
            if (library.explainers().stream().anyMatch(each -> each.stop() == stop)) {
                boolean here = chosen.equals(Optional.of(stop));
                shelves.add(new Shelf(Integer.toString(number), texts.get("stop." + stop.id()), here,
                        new Place.Topics(Optional.of(stop), 0)));
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
        return new Card(explainer.title(), explainer.summary(), explainer.topic());
    }
}
