package fencerow.kiosk.frame;

import fencerow.kiosk.frame.Speaker.Loudness;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;

/**
 * Reads the screen aloud for who asks for it: off at first, and off and as loud as usual again when the visit ends.
 * Speaks a line at a time, so that it can be paused and goes on where it was. Whatever is shown next cuts it short.
 */
final class ReadAloud {
    private static final String DESK = "read aloud";
    /** An engine that died once in a sentence says it again; one that fails twice in a row has no sound. */
    private static final int MOST_FAILED = 2;

    private final Frame frame;
    private final Overlays overlays;
    private final Speaker speaker;
    private Loudness loudness = Loudness.NORMAL;
    private Optional<Screen> screen = Optional.empty();
    private List<String> lines = List.of();
    private int next;
    private List<String> held = List.of();
    private int heldAt;
    private boolean holding;
    private boolean on;
    private int failed;

    ReadAloud(Frame frame, Overlays overlays, Speaker speaker) {
        this.frame = frame;
        this.overlays = overlays;
        this.speaker = speaker;
    }

    /** Another screen is to be read. */
    void shown(Screen next) {
        screen = Optional.of(next);
        holding = false;
        shown(next.title(), next.view());
    }

    /** A sheet over the screen is to be read; the screen can be gone on with later. */
    void laid(String title, Node content) {
        hold();
        shown(title, content);
    }

    private void hold() {
        if (!holding) {
            held = lines;
            heldAt = next;
            holding = true;
        }
    }

    private void shown(String title, Node content) {
        frame.backRoom().cancel(DESK);
        lines = on ? Spoken.of(frame, title, content) : List.of();
        next = 0;
        if (on) {
            goOn();
        }
    }

    /** Says something at once, whether the shopper has things read aloud or not. */
    void alert(String words) {
        if (canSpeak()) {
            String language = frame.comfort().language();
            frame.backRoom().work(DESK, () -> {
                speaker.say(language, words, loudness);
                return words;
            }, said -> failed = 0, failure -> failed++);
        }
    }

    private boolean canSpeak() {
        return speaker.isThere() && failed < MOST_FAILED;
    }

    /** Nobody is listening any more; the next one's voice may be back. */
    void visitEnded() {
        frame.backRoom().cancel(DESK);
        on = false;
        failed = 0;
        loudness = Loudness.NORMAL;
        lines = List.of();
        held = List.of();
        screen = Optional.empty();
    }

    private void goOn() {
        if (next >= lines.size()) {
            return;
        }
        String line = lines.get(next);
        String language = frame.comfort().language();
        Loudness now = loudness;
        frame.backRoom().work(DESK, () -> {
            speaker.say(language, line, now);
            return line;
        }, said -> {
            failed = 0;
            next++;
            goOn();
        }, failure -> {
            failed++;
            if (canSpeak()) {
                goOn();
            }
        });
    }

    /** The sheet with everything that can be done about it. */
    void lay() {
        frame.backRoom().cancel(DESK);
        hold();
        overlays.lay(frame.say("aloud.title"), canSpeak() ? controls() : missing());
    }

    private Node missing() {
        return Words.body(frame.say("aloud.missing"));
    }

    private Node controls() {
        List<Node> buttons = new ArrayList<>();
        if (on) {
            buttons.add(Buttons.primary(Icon.FORWARD, frame.say("aloud.go-on"), this::resume));
            buttons.add(Buttons.secondary(Icon.START_OVER, frame.say("aloud.repeat"), this::repeat));
            buttons.add(Buttons.secondary(Icon.CLOSE, frame.say("aloud.off"), this::turnOff));
        } else {
            buttons.add(Buttons.primary(Icon.SPEAK, frame.say("aloud.on"), this::repeat));
        }
        Node volume = new Wrap(frame.scale(), List.of(
                Buttons.secondary(Icon.MINUS, frame.say("aloud.softer"), () -> change(-1)),
                Buttons.secondary(Icon.PLUS, frame.say("aloud.louder"), () -> change(1))));
        return Boxes.loose(Words.body(frame.say("aloud.what")), new Wrap(frame.scale(), buttons),
                Boxes.stack(Words.body(frame.say("aloud.loudness", Map.of(
                        "step", loudness.step(), "count", Loudness.values().length))), volume));
    }

    private void change(int steps) {
        loudness = loudness.louder(steps);
        lay();
        alert(frame.say("aloud.loudness", Map.of("step", loudness.step(), "count", Loudness.values().length)));
    }

    /** From where it was; the sheet hid the screen but did not change it. */
    private void resume() {
        frame.lift();
        lines = held;
        next = heldAt;
        holding = false;
        goOn();
    }

    private void repeat() {
        on = true;
        frame.lift();
        screen.ifPresent(this::shown);
    }

    private void turnOff() {
        on = false;
        frame.lift();
    }
}
