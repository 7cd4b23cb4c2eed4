package fencerow.sizing;

/**
 * Something suspicious about an accepted value or a result.
 *
 * @param kind  what is suspicious
 * @param about the id of the input or output it is about
 */
public record Warning(Kind kind, String about) {

    /** What is suspicious. */
    public enum Kind {
        /** Allowed, yet outside what is usual: check the number. */
        UNUSUAL_INPUT("unusual-input"),
        /** Beyond the distances at which lift is rated. */
        EXTRAPOLATED_LIFT("extrapolated-lift"),
        /** The rating at a distance is not known, so a usual share was taken. */
        ASSUMED_LIFT("assumed-lift"),
        /** Outside a published table, so an estimate was taken. */
        ESTIMATED_VOLUME("estimated-volume"),
        /** Slush or ice at the winter low. */
        FREEZES("freezes"),
        /** The front axle is too light to steer. */
        LIGHT_STEERING("light-steering"),
        /** The rear axle is too light. */
        LIGHT_REAR_AXLE("light-rear-axle"),
        /** The front axle carries so much that nothing can be lifted before there is weight behind. */
        NO_WEIGHT_BEHIND("no-weight-behind"),
        /** Above a rating. */
        OVER_RATING("over-rating"),
        /** Works, but slowly. */
        SLOW("slow"),
        /** Does not fit, or fits only with the roll bar folded. */
        NO_ROOM("no-room"),
        /** Narrower than the wheels. */
        NARROWER_THAN_WHEELS("narrower-than-wheels"),
        /** A commercial license or rule may apply. */
        COMMERCIAL_RULES("commercial-rules"),
        /** Outside the usual band for a machine in good order. */
        OUT_OF_ORDER("out-of-order"),
        /** Overdue. */
        OVERDUE("overdue"),
        /** The two published forms of the equation lie far apart. */
        METHODS_DIFFER("methods-differ");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }
    }
}
