package fencerow.checklist;

import fencerow.terms.AtStake;
import fencerow.terms.FeatureId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.Optional;

/**
 * A line that a list may hold.
 *
 * @param id       its id; the feature's where it is about one
 * @param stop     where on the walk around the tractor it is checked
 * @param feature  the feature it is about, where it is about one
 * @param audience whose lists it belongs on
 * @param atStake  what it is worth by itself; where it says nothing, what its feature is worth counts
 * @param walkAway whether it is a sign to stop and leave
 * @param topic    the explainer that tells more
 * @param number   the number of the shopper's own that it is checked against
 */
public record LineTemplate(
        String id,
        Stop stop,
        Optional<FeatureId> feature,
        Audience audience,
        AtStake atStake,
        boolean walkAway,
        Optional<TopicId> topic,
        Optional<LineNumber.Kind> number) {
    /** A line without a number. */
    public LineTemplate(String id, Stop stop, Optional<FeatureId> feature, Audience audience, AtStake atStake,
            boolean walkAway, Optional<TopicId> topic) {
        this(id, stop, feature, audience, atStake, walkAway, topic, Optional.empty());
    }

    /** The topic through which a shopper's work and beliefs touch the line; empty if they do not matter to it. */
    public Optional<TopicId> touchedThrough() {
        return feature.map(id -> new TopicId(id.value()))
                .or(() -> audience == Audience.FEATURE ? topic : Optional.empty());
    }

    /** What is at stake where the feature is worth so much: the line's own money first, the job through either. */
    AtStake atStakeOver(AtStake ofFeature) {
        return new AtStake(
                atStake.money().isZero() ? ofFeature.money() : atStake.money(), atStake.job() || ofFeature.job());
    }

    /** Whose lists a line belongs on. */
    public enum Audience {
        /** Every list. */
        EVERYONE("everyone"),
        /** Lists of shoppers who may buy a used machine. */
        USED("used"),
        /** Lists of shoppers who may buy a new machine. */
        NEW("new"),
        /** Lists of shoppers whose work or beliefs touch the feature or the topic. */
        FEATURE("feature");

        private final String id;

        Audience(String id) {
            this.id = id;
        }

        /** The word used in files. */
        public String id() {
            return id;
        }
    }
}
