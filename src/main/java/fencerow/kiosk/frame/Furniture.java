package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Flanks;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Touch;
import fencerow.kiosk.kit.Words;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What stays the same around every screen: the heading with the way back, and the strip at the foot. */
final class Furniture {
    /** From this width, in ems, both buttons of the heading say in words what they do. */
    private static final double ROOM_FOR_WORDS = 36;

    /** Of the screen's height. */
    private static final double BEYOND_REACH = 0.3;
    /** Of the screen's height that what is shown keeps at the least. */
    private static final double LEAST_ROOM = 0.4;

    private final Frame frame;
    private final BorderPane pane = new BorderPane();

    Furniture(Frame frame) {
        this.frame = frame;
    }

    Node node() {
        return pane;
    }

    /** Heading, screen and strip, as far as they are shown. */
    List<Node> layers() {
        return Stream.of(pane.getTop(), pane.getCenter(), pane.getBottom()).filter(Objects::nonNull).toList();
    }

    /** The screen alone. */
    Node content() {
        return pane.getCenter();
    }

    void show(Screen screen) {
        if (screen.bare()) {
            pane.setTop(null);
            pane.setBottom(null);
        } else {
            boolean low = frame.comfort().isLow(frame.isLandscape());
            Node header = header(screen);
            Node strip = new Strip(frame).node();
            pane.setTop(low ? beyondReach() : header);
            pane.setBottom(low ? new VBox(header, strip) : strip);
        }
        StackPane room = new StackPane(screen.view());
        room.getStyleClass().add(screen.bare() ? "bare" : Styles.SCREEN);
        pane.setCenter(room);
    }

    /** The upper part of the screen, left empty for who cannot reach there, as far as there is room. */
    private Region beyondReach() {
        return new Region() {
            @Override
            protected double computePrefHeight(double width) {
                double height = pane.getHeight();
                double room = Math.max(LEAST_ROOM * height, pane.getCenter().minHeight(pane.getWidth()));
                double rest = height - pane.getBottom().prefHeight(pane.getWidth()) - room;
                return Math.rint(Math.max(0, Math.min(BEYOND_REACH * height, rest)));
            }
        };
    }

    /** The search, but on the search itself. */
    private HBox ways(Screen screen) {
        HBox ways = Boxes.row();
        if (!(screen.place() instanceof Place.Find)) {
            ways.getChildren().add(Buttons.icon(
                    Icon.SEARCH, frame.say("header.search"), () -> frame.go(Place.Find.EMPTY)));
        }
        ways.getChildren().add(homeButton());
        return ways;
    }

    private Touch homeButton() {
        String name = frame.say("header.home");
        Runnable home = () -> frame.go(new Place.Home());
        return frame.widthInEms() < ROOM_FOR_WORDS
                ? Buttons.icon(Icon.HOME, name, home)
                : Buttons.quiet(Icon.HOME, name, home);
    }

    private Node header(Screen screen) {
        boolean home = screen.place() instanceof Place.Home;
        Optional<Node> back = home
                ? Optional.empty()
                : Optional.of(Buttons.quiet(Icon.BACK, frame.say("header.back"), frame::back));
        Flanks row = new Flanks(frame.scale(), back, Words.title(screen.title()),
                home ? Optional.empty() : Optional.of(ways(screen)));
        row.getStyleClass().add(Styles.HEADER);
        return row;
    }
}
