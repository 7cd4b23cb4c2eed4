package fencerow;

import fencerow.backoffice.Folders;
import fencerow.content.Footprint;
import fencerow.kiosk.frame.Greeting;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Openings;
import fencerow.kiosk.frame.Premises;
import fencerow.search.Query;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Follows the showroom's files: reads them at the start, and again whenever they have changed and then lain still from
 * one look to the next. What cannot be shown leaves what is shown in force and tells staff why. For any thread.
 */
final class KioskFiles implements Openings {
    private final KioskWiring wiring;
    private final Folders folders;
    private final GreetingFile greeting;
    private Footprint read = new Footprint(Map.of());
    private Footprint seen = read;
    private Optional<Premises> inForce = Optional.empty();

    KioskFiles(KioskWiring wiring, Folders folders) {
        this.wiring = wiring;
        this.folders = folders;
        this.greeting = wiring.greeting(folders);
    }

    @Override
    public synchronized Opening open() {
        read = look();
        seen = read;
        Opening opening = wiring.open(folders);
        inForce = premises(opening);
        return opening;
    }

    @Override
    public synchronized Optional<Opening> findNewer() {
        Footprint now = look();
        boolean resting = now.equals(seen);
        seen = now;
        if (!resting) {
            return Optional.empty();
        }
        if (now.equals(read)) {
            return restocked();
        }
        read = now;
        Opening opening = wiring.read(folders);
        if (opening instanceof Opening.Closed closed && inForce.isPresent()) {
            opening = new Opening.Open(inForce.get().withProblems(closed.problems()));
        }
        inForce = premises(opening);
        inForce.ifPresent(KioskFiles::awaitIndex);
        return Optional.of(opening);
    }

    @Override
    public Optional<Greeting> findGreeting() {
        return greeting.find();
    }

    @Override
    public void keep(Greeting next) {
        greeting.keep(next);
    }

    /** Staff or another program has changed the stock. */
    private Optional<Opening> restocked() {
        Optional<Premises> changed = wiring.findRestocked();
        if (changed.isPresent()) {
            inForce = changed;
        }
        return changed.map(Opening.Open::new);
    }

    private Footprint look() {
        return Footprint.of(
                Stream.concat(Stream.of(folders.content(), folders.config()), folders.stock().stream()).toList());
    }

    private static Optional<Premises> premises(Opening opening) {
        return opening instanceof Opening.Open open ? Optional.of(open.premises()) : Optional.empty();
    }

    /** A search waits until the index is there; better here than in front of the next shopper. */
    private static void awaitIndex(Premises premises) {
        premises.search().find(Query.of("", premises.settings().languages().get(0)));
    }
}
