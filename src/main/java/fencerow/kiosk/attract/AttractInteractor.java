package fencerow.kiosk.attract;

import fencerow.stock.Catalogue;
import fencerow.terms.Feature;
import fencerow.wording.Texts;
import java.util.List;
import java.util.stream.Stream;

/** Picks true content for passers-by: the first few core features whose wrong belief is written down. */
final class AttractInteractor {
    /** With the view's time for each, the loop stays below half a minute. */
    private static final int TURNS = 4;

    private final Catalogue catalogue;
    private final Texts texts;

    AttractInteractor(Catalogue catalogue, Texts texts) {
        this.catalogue = catalogue;
        this.texts = texts;
    }

    List<AttractModel.Turn> turns() {
        return catalogue.features().stream().filter(Feature::core).flatMap(this::turn).limit(TURNS).toList();
    }

    private Stream<AttractModel.Turn> turn(Feature feature) {
        String prefix = "feature." + feature.id();
        return texts.find(prefix + ".belief").stream().flatMap(belief ->
                texts.find(prefix + ".truth").stream().map(truth -> new AttractModel.Turn(belief, truth)));
    }
}
