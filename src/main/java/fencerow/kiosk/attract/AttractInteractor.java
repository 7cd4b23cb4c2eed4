package fencerow.kiosk.attract;

import fencerow.explainers.Pictures;
import fencerow.kiosk.kit.Sketch;
import fencerow.stock.Catalogue;
import fencerow.terms.Feature;
import fencerow.wording.Texts;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Picks true content for passers-by: a few core features from all round the tractor whose wrong belief is written
 * down, those that are drawn where there are any.
 */
final class AttractInteractor {
    /** With the view's time for each, the loop stays below half a minute. */
    private static final int TURNS = 4;

    private final Catalogue catalogue;
    private final Texts texts;
    private final Pictures pictures;

    AttractInteractor(Catalogue catalogue, Texts texts, Pictures pictures) {
        this.catalogue = catalogue;
        this.texts = texts;
        this.pictures = pictures;
    }

    List<AttractModel.Turn> turns() {
        List<AttractModel.Turn> all = catalogue.features().stream()
                .filter(Feature::core)
                .flatMap(this::turn)
                .toList();
        List<AttractModel.Turn> drawn = all.stream().filter(turn -> turn.sketch().isPresent()).toList();
        List<AttractModel.Turn> from = drawn.isEmpty() ? all : drawn;
        int turns = Math.min(TURNS, from.size());
        return IntStream.range(0, turns).mapToObj(turn -> from.get(turn * from.size() / turns)).toList();
    }

    private Stream<AttractModel.Turn> turn(Feature feature) {
        String prefix = "feature." + feature.id();
        return texts.find(prefix + ".belief").stream().flatMap(belief ->
                texts.find(prefix + ".truth").stream().map(truth -> new AttractModel.Turn(
                        texts.get(prefix + ".name"), belief, truth,
                        Sketch.of(pictures.find(feature.id().value()), texts))));
    }
}
