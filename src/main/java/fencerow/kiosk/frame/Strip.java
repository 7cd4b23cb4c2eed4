package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import fencerow.terms.QuestionId;
import fencerow.visit.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The strip at the foot: the visit so far, and what is one touch away everywhere. */
final class Strip {
    private static final QuestionId JOBS = new QuestionId("jobs");

    private final Frame frame;
    private final Label jobs = Words.of("count", "");
    private final Label musts = Words.of("further-count", "");
    private final Label ready = Words.of("further-count", "");
    private final Touch visit;
    private final Node node;

    Strip(Frame frame) {
        this.frame = frame;
        Wrap counts = new Wrap(frame.scale(), List.of(jobs, musts, ready));
        counts.getStyleClass().add("counts");
        visit = new Touch(frame.say("strip.visit"), counts, this::showVisit).styled(Styles.QUIET, "visit");
        List<Node> all = new ArrayList<>(List.of(visit));
        all.addAll(controls());
        node = new Wrap(frame.scale(), all).apart();
        node.getStyleClass().add(Styles.STRIP);
        frame.follow(frame.visit(), this::tell);
        frame.follow(frame.outlook(), this::tell);
    }

    Node node() {
        return node;
    }

    private void tell(Visit now) {
        jobs.setText(frame.say("strip.jobs", Map.of("count", now.answers().chosen(JOBS).size())));
        name();
    }

    /** What stands on it comes first, so that it can be called by that. */
    private void name() {
        visit.setAccessibleText(Stream.of(jobs.getText(), musts.getText(), ready.getText(), frame.say("strip.visit"))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", ")));
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> {
            musts.setText(frame.say("strip.musts", Map.of("count", known.needs().musts().size())));
            boolean asked = !known.needs().requirements().isEmpty();
            int count = asked ? known.ranking().ready().size() : known.ranking().matches().size();
            ready.setText(frame.say(asked ? "strip.ready" : "strip.here", Map.of("count", count)));
            name();
        });
    }

    private void showVisit() {
        boolean answered = !frame.visit().get().answers().equals(Visit.NEW.answers());
        frame.go(answered ? Place.Results.TOP : Place.Questions.NEXT);
    }

    private List<Node> controls() {
        List<Node> all = new ArrayList<>();
        Comfort now = frame.comfort();
        all.add(Buttons.quiet(Icon.START_OVER, frame.say("strip.start-over"), () -> frame.startOver(new Place.Home())));
        List<String> languages = frame.premises().settings().languages();
        if (languages.size() > 1) {
            String next = languages.get((languages.indexOf(now.language()) + 1) % languages.size());
            String name = frame.premises().texts(next).get("kiosk.strip.language");
            all.add(Buttons.quiet(Icon.LANGUAGE, name, () -> frame.change(now.withLanguage(next))));
        }
        all.add(Buttons.quiet(Icon.TEXT_SIZE, frame.say("strip.text-size"),
                () -> frame.change(now.withTextSize(now.textSize().next()))));
        all.add(Buttons.quiet(Icon.CONTRAST, frame.say("strip.contrast"),
                () -> frame.change(now.withOtherContrast())));
        all.add(Buttons.quiet(Icon.UNITS, frame.say(now.metric() ? "strip.units-metric" : "strip.units-us"),
                () -> frame.change(now.withOtherUnits())));
        all.add(Buttons.quiet(Icon.HELP, frame.say("strip.help"), this::help));
        return all;
    }

    private void help() {
        VBox help = Boxes.loose(
                Words.body(frame.say("help." + frame.here().key())),
                Words.body(frame.say("help.strip")),
                Words.small(frame.say("help.privacy")),
                Buttons.secondary(Icon.SPEAK, frame.say("aloud.title"), frame.aloud::lay));
        if (Comfort.canBeLow(frame.isLandscape(), frame.comfort().textSize())) {
            String words = frame.comfort().lowReach() ? "low-reach.off" : "low-reach.on";
            help.getChildren().add(Buttons.secondary(Icon.LOWER, frame.say(words),
                    () -> frame.change(frame.comfort().withOtherReach())));
        }
        help.getChildren().add(
                Buttons.quiet(Icon.STAFF, frame.say("help.staff-door"), () -> frame.go(new Place.Staff())));
        frame.lay(frame.say("strip.help"), help);
    }
}
