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
 * @param atStake  what it is worth, for lines that are not about a feature
 * @param walkAway whether it is a sign to stop and leave
 * @param topic    the explainer that tells more
 */
public record LineTemplate(
        String id,
        Stop stop,
        Optional<FeatureId> feature,
        Audience audience,
        AtStake atStake,
        boolean walkAway,
        Optional<TopicId> topic) {
    /** Whose lists a line belongs on. */
    public enum Audience {
        /** Every list. */
        EVERYONE("everyone"),
        /** Lists of shoppers who may buy a used machine. */
        USED("used"),
        /** Lists of shoppers who may buy a new machine. */
        NEW("new"),
        /** Lists of shoppers whose work or beliefs touch the feature. */
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
