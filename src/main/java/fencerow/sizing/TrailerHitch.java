package fencerow.sizing;

import fencerow.terms.Mass;
import java.util.Optional;

/**
 * Classes of trailer hitch by the gross trailer mass they are made for. "Class V" lies outside the standard and makers
 * differ: read the label. Source: {@link Source#TRAILER_HITCHES}. Caution: {@link Caution#ROAD_LAW}.
 */
public enum TrailerHitch {
    CLASS_1("class-1", 2000),
    CLASS_2("class-2", 3500),
    CLASS_3("class-3", 5000),
    CLASS_4("class-4", 10_000);

    private final String id;
    private final Mass rating;

    TrailerHitch(String id, double pounds) {
        this.id = id;
        this.rating = Mass.ofPounds(pounds);
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Largest gross trailer mass. */
    public Mass rating() {
        return rating;
    }

    /** The smallest class for a gross trailer mass; none above 10,000 lb. */
    public static Optional<TrailerHitch> forGross(Mass gross) {
        for (TrailerHitch each : values()) {
            if (gross.si() <= each.rating.si() + 1e-9) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
