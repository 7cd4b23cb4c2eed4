package fencerow.kiosk.frame;

import fencerow.desk.Settings;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import javafx.scene.input.MouseEvent;

/**
 * Tells a finger that bounced from one that touched twice: a second touch at the same spot within the guard's time does
 * nothing, so that what a first touch brought up is not touched unseen (EN 301 549, 5.8: double-strike acceptance).
 */
final class Strikes {
    /** Fingers that shake come down again within this, in millimetres. */
    static final double SAME_SPOT = 10;

    private final Clock clock;
    private final Duration guard;
    private Optional<Strike> last = Optional.empty();
    private boolean ignoring;

    private record Strike(Instant at, double x, double y) {}

    Strikes(Clock clock, Settings.Panel panel) {
        this.clock = clock;
        this.guard = panel.doubleTouch();
    }

    /** Takes an event of a bounced touch away from the screen; {@code pixels} go into a millimetre. */
    void filter(MouseEvent event, double pixels) {
        if (event.getEventType() == MouseEvent.MOUSE_PRESSED) {
            Strike now = new Strike(clock.instant(), event.getSceneX(), event.getSceneY());
            ignoring = last.filter(before -> isBounce(before, now, SAME_SPOT * pixels)).isPresent();
            last = Optional.of(now);
        }
        boolean ofATouch = event.getEventType() == MouseEvent.MOUSE_PRESSED
                || event.getEventType() == MouseEvent.MOUSE_DRAGGED
                || event.getEventType() == MouseEvent.MOUSE_RELEASED
                || event.getEventType() == MouseEvent.MOUSE_CLICKED;
        if (ignoring && ofATouch) {
            event.consume();
        }
    }

    private boolean isBounce(Strike before, Strike now, double near) {
        return Duration.between(before.at(), now.at()).compareTo(guard) < 0
                && Math.hypot(now.x() - before.x(), now.y() - before.y()) < near;
    }
}
