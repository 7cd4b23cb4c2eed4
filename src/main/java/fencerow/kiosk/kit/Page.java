package fencerow.kiosk.kit;

import java.util.Collection;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;

/**
 * Content that may be longer than the screen, and below it, always in sight, what to do next. Both can be shown anew;
 * how far the content is scrolled stays.
 */
public final class Page extends BorderPane {
    private final StackPane content = new StackPane();
    private final Column column;

    /**
     * Empty yet.
     *
     * @param position how far it is scrolled at first: 0 at the top, 1 at the end
     * @param upName   the name of the button that turns back
     * @param downName the name of the button that turns on
     */
    public Page(Scale scale, double position, String upName, String downName) {
        this.column = new Column(scale, content, position, upName, downName);
        content.getStyleClass().add("page-content");
        getStyleClass().add(Styles.PAGE);
        setCenter(column);
    }

    /** Shows content, with nothing below it. */
    public void show(Node next) {
        content.getChildren().setAll(next);
        StackPane.setMargin(next, Insets.EMPTY);
        column.requestLayout();
    }

    /** Shows what to do next: aside on the left, onward on the right. */
    public void showFoot(Scale scale, Collection<? extends Node> aside, Collection<? extends Node> onward) {
        Ends foot = new Ends(scale, new Wrap(scale, aside), new Wrap(scale, onward)).toTheRight();
        foot.getStyleClass().add("foot");
        setBottom(foot);
    }

    /** How far the content is scrolled: 0 at the top, 1 at the end. */
    public double position() {
        return column.position();
    }
}
