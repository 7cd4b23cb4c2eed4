package fencerow.kiosk;

import fencerow.kiosk.attract.AttractGreeter;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Greeting;
import fencerow.kiosk.frame.KioskWindow;
import fencerow.kiosk.frame.OpenWindow;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Openings;
import fencerow.kiosk.frame.Speaker;
import fencerow.kiosk.trouble.TroubleView;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The whole kiosk in its own window, with its own threads, over files or whatever else it opens.
 *
 * @param offers how often something newer was found
 */
public record LiveKiosk(OpenWindow window, HandClock clock, AtomicInteger offers) implements AutoCloseable {
    private static final int PATIENCE_SECONDS = 120;

    /** Opens it and waits until there is something to see. */
    public static LiveKiosk of(Openings openings) {
        LiveKiosk kiosk = opening(openings);
        kiosk.waitFor(() -> kiosk.window().frame().isPresent(), "a first screen");
        return kiosk;
    }

    /** Opens it and does not wait. */
    public static LiveKiosk opening(Openings openings) {
        var clock = new HandClock();
        var offers = new AtomicInteger();
        var content = new KioskWindow.Content(counting(openings, offers), Screens::make, TroubleView::of,
                new AttractGreeter(), Speaker.NONE);
        return new LiveKiosk(OpenWindow.of(content, clock), clock, offers);
    }

    /** The demo showroom, which never changes; lists go nowhere. */
    public static Openings demo() {
        return new Openings() {
            @Override
            public Opening open() {
                return new Opening.Open(Rooms.premises());
            }

            @Override
            public Optional<Opening> findNewer() {
                return Optional.empty();
            }
        };
    }

    private static Openings counting(Openings openings, AtomicInteger offers) {
        return new Openings() {
            @Override
            public Opening open() {
                return openings.open();
            }

            @Override
            public Optional<Greeting> findGreeting() {
                return openings.findGreeting();
            }

            @Override
            public void keep(Greeting greeting) {
                openings.keep(greeting);
            }

            @Override
            public Optional<Opening> findNewer() {
                Optional<Opening> newer = openings.findNewer();
                newer.ifPresent(found -> offers.incrementAndGet());
                return newer;
            }
        };
    }

    /** Waits until something newer has been read and offered to the kiosk. */
    public void waitForOffer(Runnable change) {
        int before = offers.get();
        change.run();
        waitFor(() -> offers.get() > before, "something newer");
        Fx.on(() -> true);
    }

    /** The frame shown now. On JavaFX's thread. */
    public Frame frame() {
        return window.frame().orElseThrow();
    }

    /** The kiosk as tests of single screens see it. */
    public Shown shown() {
        return new Shown(window.frame().orElseThrow(), window.stage().getScene(), clock);
    }

    /** Waits until it is so, asking on JavaFX's thread. */
    public void waitFor(Callable<Boolean> so, String what) {
        for (int waited = 0; !Fx.on(so); waited++) {
            if (waited > PATIENCE_SECONDS * 10) {
                throw new AssertionError(what + " did not come");
            }
            try {
                TimeUnit.MILLISECONDS.sleep(100);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError(what + " was not waited for", e);
            }
        }
    }

    @Override
    public void close() {
        window.close();
    }
}
