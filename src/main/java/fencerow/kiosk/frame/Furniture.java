package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Words;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;

/** What stays the same around every screen: the heading with the way back, and the strip at the foot. */
final class Furniture {
    private final Frame frame;
    private final BorderPane pane = new BorderPane();

    Furniture(Frame frame) {
        this.frame = frame;
    }

    Node node() {
        return pane;
    }

    void show(Screen screen) {
        if (screen.bare()) {
            pane.setTop(null);
            pane.setBottom(null);
        } else {
            pane.setTop(header(screen));
            pane.setBottom(new Strip(frame).node());
        }
        StackPane room = new StackPane(screen.view());
        room.getStyleClass().add(screen.bare() ? "bare" : Styles.SCREEN);
        pane.setCenter(room);
    }

    private Node header(Screen screen) {
        boolean home = screen.place() instanceof Place.Home;
        Label title = Words.title(screen.title());
        HBox row = home
                ? Boxes.row(Boxes.growing(title))
                : Boxes.row(Buttons.quiet(Icon.BACK, frame.say("header.back"), frame::back), Boxes.growing(title),
                        Buttons.quiet(Icon.HOME, frame.say("header.home"), () -> frame.go(new Place.Home())));
        row.getStyleClass().add(Styles.HEADER);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }
}
