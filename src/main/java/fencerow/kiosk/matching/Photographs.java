package fencerow.kiosk.matching;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.UnitPictures;
import fencerow.terms.UnitId;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;

/**
 * The photographs on a screen's cards: each is read once, in the background and no larger than its place. Confined to
 * the screen's thread.
 */
public final class Photographs {
    private static final String DESK = "photographs";

    private final Frame frame;
    private final UnitPictures pictures;
    private final Map<UnitId, Photograph> read = new HashMap<>();
    private final Map<UnitId, PhotographPane> places = new HashMap<>();

    /** Of the frame's units. */
    public Photographs(Frame frame) {
        this.frame = frame;
        this.pictures = frame.premises().pictures();
    }

    /** A new place for the unit's photograph; empty where it has none. */
    public Optional<Node> findPlace(UnitId unit) {
        if (!pictures.has(unit)) {
            return Optional.empty();
        }
        PhotographPane place = new PhotographPane(frame.scale());
        places.put(unit, place);
        Optional.ofNullable(read.get(unit)).ifPresent(photograph -> show(unit, photograph));
        return Optional.of(place);
    }

    /** Reads what the places given out still lack. */
    public void readMissing() {
        List<UnitId> missing = places.keySet().stream().filter(unit -> !read.containsKey(unit)).toList();
        if (missing.isEmpty()) {
            return;
        }
        // Should reading fail, a card says everything without its photograph.
        double dots = PhotographPane.dots(frame.scale());
        frame.backRoom().work(DESK, () -> {
            Map<UnitId, Photograph> found = new LinkedHashMap<>();
            missing.forEach(unit -> found.put(unit, Photograph.of(pictures.find(unit), dots)));
            return found;
        }, found -> {
            read.putAll(found);
            found.forEach(this::show);
        }, failure -> { });
    }

    private void show(UnitId unit, Photograph photograph) {
        Optional.ofNullable(places.get(unit))
                .ifPresent(place -> place.show(photograph, frame.say("unit.photograph")));
    }
}
