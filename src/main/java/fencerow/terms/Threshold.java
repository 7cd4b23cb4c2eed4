package fencerow.terms;

/** The amount a demand asks for: fixed, or worked out for the machine it is asked of. */
public sealed interface Threshold {
    /** The same on every machine. */
    record Fixed(Amount amount) implements Threshold {}

    /**
     * The weight this machine needs behind its rear axle to carry a load in front and keep its rear wheels loaded.
     *
     * @param load at the loader's bucket
     */
    record Counterweight(Amount load) implements Threshold {}

    /**
     * The lift at the rated distance that this machine needs to lift a load at the load's own center.
     *
     * @param load at the loader
     */
    record Payload(Amount load) implements Threshold {}

    /**
     * The weight this machine needs ahead of its front axle to keep steering with a tool raised behind.
     *
     * @param tool on the hitch
     */
    record SteeringWeight(Amount tool) implements Threshold {}

    /**
     * The cutting width that mows an area in a time.
     *
     * @param area to be mown each time
     * @param time the shopper has for it
     */
    record MowingWidth(Amount area, Amount time) implements Threshold {}

    /** The same on every machine. */
    static Threshold of(Amount amount) {
        return new Fixed(amount);
    }
}
