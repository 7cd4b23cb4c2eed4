package fencerow.sizing;

import fencerow.terms.Flow;
import fencerow.terms.Spread;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Hydraulic circuits that tools ask for. One circuit is one spool with two couplers. Source:
 * {@link Source#TRADE_PRACTICE}. Caution: {@link Caution#OIL_INJECTION}, {@link Caution#RELIEVE_PRESSURE}.
 */
public enum HydraulicTool {
    /** One lid, or two tied together. */
    GRAPPLE("grapple", 1, 0, 2, 10),
    /** Two lids that move apart from each other. */
    GRAPPLE_TWO_LIDS("grapple-two-lids", 2, 0, 2, 10),
    ANGLING_BLADE("angling-blade", 1, 0, 2, 10, Need.CROSS_PORT_RELIEF),
    V_BLADE("v-blade", 2, 0, 2, 10, Need.CROSS_PORT_RELIEF),
    COMBINATION_BUCKET("combination-bucket", 1, 0, 2, 10),
    HYDRAULIC_AUGER("hydraulic-auger", 1, 0, 6, 15, Need.CONTINUOUS, Need.FREE_RETURN),
    TOP_LINK("top-link", 0, 1, 1, 10, Need.LOAD_HOLDING),
    SIDE_LINK("side-link", 0, 1, 1, 10, Need.LOAD_HOLDING),
    LOG_SPLITTER("log-splitter", 0, 1, 5, 16, Need.DETENT, Need.FREE_RETURN),
    CHIPPER_FEED("chipper-feed", 0, 1, 2, 10, Need.CONTINUOUS, Need.FREE_RETURN),
    BLOWER_CHUTE("blower-chute", 0, 1, 1, 5),
    /** Chute and deflector apart. */
    BLOWER_CHUTE_AND_DEFLECTOR("blower-chute-and-deflector", 0, 2, 1, 5),
    POST_DRIVER("post-driver", 0, 1, 5, 15, Need.CONTINUOUS, Need.FREE_RETURN),
    /** Pressure out, return in, tank line; no remote does it. */
    BACKHOE("backhoe", 0, 0, 5, 9, Need.POWER_BEYOND);

    /** What a circuit must be able to do. */
    public enum Need {
        /** The lever stays when let go. */
        DETENT("detent"),
        /** The lever is held for minutes: flow and heat limit. */
        CONTINUOUS("continuous"),
        /** Oil returns without going through the valve. */
        FREE_RETURN("free-return"),
        /** A check valve in the cylinder holds the load. */
        LOAD_HOLDING("load-holding"),
        /** A blow on the blade finds a way out. */
        CROSS_PORT_RELIEF("cross-port-relief"),
        /** A pressure port that feeds another valve. */
        POWER_BEYOND("power-beyond");

        private final String id;

        Need(String id) {
            this.id = id;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }
    }

    private final String id;
    private final int front;
    private final int rear;
    private final Spread<Flow> flow;
    private final Set<Need> needs;

    HydraulicTool(String id, int front, int rear, double slowGpm, double fastGpm, Need... needs) {
        this.id = id;
        this.front = front;
        this.rear = rear;
        this.flow = Spread.of(Flow.ofGpm(slowGpm), Flow.ofGpm(fastGpm));
        Set<Need> all = EnumSet.noneOf(Need.class);
        Collections.addAll(all, needs);
        this.needs = Collections.unmodifiableSet(all);
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Circuits at the loader. */
    public int front() {
        return front;
    }

    /** Circuits at the rear. */
    public int rear() {
        return rear;
    }

    /** Flow from too slow to be of use to as much as it takes. */
    public Spread<Flow> flow() {
        return flow;
    }

    /** What its circuits must be able to do. */
    public Set<Need> needs() {
        return needs;
    }
}
