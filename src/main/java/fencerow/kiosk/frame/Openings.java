package fencerow.kiosk.frame;

import java.util.Optional;

/** Where what is shown comes from, at the start and later. Called in the background; for any thread. */
public interface Openings {
    /** What there is to show now; takes a while. */
    Opening open();

    /** What there is to show instead, if it has changed since and is at rest; takes a while only then. */
    Optional<Opening> findNewer();

    /** What to show until there is something; quick. Called on the screen's thread. */
    default Optional<Greeting> findGreeting() {
        return Optional.empty();
    }

    /** Keeps what the next start is to greet with. Called in the background. */
    default void keep(Greeting greeting) {}
}
