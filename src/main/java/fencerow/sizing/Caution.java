package fencerow.sizing;

/** What to be careful about; stands beside every number on screen and paper. */
public enum Caution {
    /** For choosing and asking; the operator's manual and the plate on the machine decide. */
    NOT_AN_APPROVAL("not-an-approval"),
    /** Mowers throw stones about 300 ft (92 m): keep people away. */
    THROWN_OBJECTS("thrown-objects"),
    /** Slow down on slopes and rough ground; never drive faster to meet an estimate. */
    SPEED_ON_ROUGH_GROUND("speed-on-rough-ground"),
    /** Roll bar up and belt on. */
    ROPS_AND_BELT("rops-and-belt"),
    /** Level ground is assumed; no weight and no fluid makes a slope safe. */
    SLOPES("slopes"),
    /** Carry low, lift only to dump, turn slowly. */
    CARRY_LOW("carry-low"),
    /** Nobody in the bucket, under it, or under raised arms. */
    NOBODY_UNDER_LOAD("nobody-under-load"),
    /** Fit the ballast before lifting. */
    BALLAST_BEFORE_LIFTING("ballast-before-lifting"),
    /** A bale without a bale tool can roll down the arms onto the seat. */
    BALE_ROLLS_BACK("bale-rolls-back"),
    /** Press the attachment on the ground and see both locks before lifting. */
    CHECK_COUPLER_LOCKS("check-coupler-locks"),
    /** Ballast must stay within the axle and tire ratings. */
    AXLE_AND_TIRE_RATINGS("axle-and-tire-ratings"),
    /** At most 75 % full, the valve at the top; front tires only if the manual allows. */
    FLUID_FILL_LIMIT("fluid-fill-limit"),
    /** Calcium chloride rusts rims and kills plants. */
    FLUID_CORROSION("fluid-corrosion"),
    /** Methanol and ethylene glycol are poisonous; methanol burns. */
    FLUID_POISON("fluid-poison"),
    /** Drive slowly on the road with liquid in the tires. */
    FLUID_ROAD_SPEED("fluid-road-speed"),
    /** Leave filling and draining to a tire shop: the valve core is under pressure. */
    FLUID_UNDER_PRESSURE("fluid-under-pressure"),
    /** Keep the shaft guards on; never step over a turning shaft. */
    PTO_GUARDS("pto-guards"),
    /** Engine off and key out before unplugging or touching a driven tool. */
    PTO_OFF_FIRST("pto-off-first"),
    /** Never run a 540 rpm tool at 1,000 rpm or the reverse. */
    PTO_SPEED_MATCH("pto-speed-match"),
    /** Have buried lines marked before digging. */
    DIG_SAFELY("dig-safely"),
    /** Never feel for a leak by hand: oil under pressure enters the skin. */
    OIL_INJECTION("oil-injection"),
    /** Lower everything and relieve pressure before uncoupling; block raised arms. */
    RELIEVE_PRESSURE("relieve-pressure"),
    /** Never stand between tractor and implement when backing in. */
    STAND_CLEAR_OF_HITCH("stand-clear-of-hitch"),
    /** A light front axle does not steer. */
    STEERING_WEIGHT("steering-weight"),
    /** Load on level ground, heavy end uphill, loader low, brake, chock. */
    LOADING_ON_TRAILER("loading-on-trailer"),
    /** State law and the vehicle labels decide what may be towed and who may drive. */
    ROAD_LAW("road-law"),
    /** Look at the tie-downs after a few miles and again on the way. */
    RECHECK_TIE_DOWNS("recheck-tie-downs"),
    /** Clear a blower with the engine off and a stick, never a hand. */
    BLOWER_CLEARING("blower-clearing"),
    /** Curbs and wires hide under snow. */
    HIDDEN_UNDER_SNOW("hidden-under-snow"),
    /** A folded bar protects nobody: raise and pin it at once. */
    FOLDED_ROPS("folded-rops"),
    /** An estimate, not an appraisal. */
    ESTIMATE_NOT_APPRAISAL("estimate-not-appraisal"),
    /** Not an offer of credit. */
    NOT_AN_OFFER_OF_CREDIT("not-an-offer-of-credit"),
    /** Plugs or muffs on an open station. */
    HEARING("hearing"),
    /** Test drift from the side with the area clear; never stand under raised arms. */
    DRIFT_TEST("drift-test");

    private final String id;

    Caution(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
