package fencerow.sizing;

/**
 * What the voltage of a 12 V battery says, engine running.
 *
 * <p>Source: {@link Source#CHARGING_CHECKS}: 12.65 V rested; running about 14 V, accepted from 13.5 to 14.5, doubted
 * below 13.3 and above 15.2. Caution: {@link Caution#NOT_AN_APPROVAL}.
 */
public enum BatteryState {
    /** Below 13.3 V: not charging. */
    LOW("low"),
    /** Between the bands: look again. */
    DOUBTFUL("doubtful"),
    /** 13.5 to 14.5 V. */
    GOOD("good"),
    /** Above 15.2 V: overcharging. */
    HIGH("high");

    /** Full, rested, engine off. */
    public static final double RESTED_VOLTS = 12.65;

    private final String id;

    BatteryState(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /**
     * The state at a voltage with the engine running.
     *
     * @param volts 5 to 20
     * @throws IllegalArgumentException outside
     */
    public static BatteryState running(double volts) {
        if (!(volts >= 5 && volts <= 20)) {
            throw new IllegalArgumentException("voltage " + volts + " V is outside the valid range; give 5 to 20 V");
        }
        if (volts < 13.3) {
            return LOW;
        }
        if (volts > 15.2) {
            return HIGH;
        }
        return volts >= 13.5 && volts <= 14.5 ? GOOD : DOUBTFUL;
    }
}
