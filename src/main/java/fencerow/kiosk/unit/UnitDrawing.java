package fencerow.kiosk.unit;

import fencerow.explainers.Library;
import fencerow.explainers.Picture;
import fencerow.explainers.Pictures;
import fencerow.kiosk.kit.PartMark;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.TopicId;
import fencerow.wording.Phrases;
import fencerow.wording.Standing;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Picks out on the drawn tractor what is on a unit, what can be added, what is missing and what nobody has checked. */
record UnitDrawing(Catalogue catalogue, Library library, Phrases phrases) {
    /** Seen from its side, where most of it shows; empty if that drawing is not shipped. */
    Optional<UnitModel.Drawn> of(Unit unit) {
        return library.pictures().tractor(Pictures.Side.SIDE).map(picture -> drawn(picture, unit));
    }

    private UnitModel.Drawn drawn(Picture picture, Unit unit) {
        Map<String, String> parts = new HashMap<>();
        Map<String, PartMark> marks = new HashMap<>();
        for (String part : picture.drawing().parts()) {
            Optional<Feature> feature = catalogue.findFeature(new FeatureId(part))
                    .filter(each -> library.find(new TopicId(part)).isPresent());
            if (feature.isPresent()) {
                Standing standing = Standing.of(unit, feature.get(), catalogue, phrases);
                parts.put(part, phrases.labels().feature(feature.get().id()) + ": " + standing.words());
                marks.put(part, mark(standing.kind()));
            }
        }
        List<UnitModel.LegendLine> legend = Arrays.stream(PartMark.values())
                .filter(marks::containsValue)
                .map(mark -> new UnitModel.LegendLine(mark, phrases.texts().get(
                        "kiosk.unit.mark." + mark.name().toLowerCase(Locale.ROOT))))
                .toList();
        return new UnitModel.Drawn(picture.drawing(), phrases.texts().get("kiosk.unit.drawing"), parts, marks, legend);
    }

    private static PartMark mark(Standing.Kind kind) {
        return switch (kind) {
            case THERE -> PartMark.FITTED;
            case EXTRA -> PartMark.EXTRA;
            case MISSING, NEVER -> PartMark.MISSING;
            case UNKNOWN -> PartMark.UNVERIFIED;
        };
    }
}
