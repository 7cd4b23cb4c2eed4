package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Rectangle2D;
import javafx.scene.Cursor;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.StageStyle;

/**
 * Keeps every screen of the machine covered: the primary one by the kiosk, any other by an empty curtain, so that no
 * desktop can be touched. Confined to the screen's thread.
 */
final class Cover {
    private static final System.Logger LOG = System.getLogger(Cover.class.getName());

    private static final int LOOKS_UNTIL_OPENED_ANEW = 3;

    private final Stage stage;
    private final List<Stage> curtains = new ArrayList<>();
    private Rectangle2D covered = Rectangle2D.EMPTY;
    private List<Rectangle2D> curtained = List.of();
    private int looksAway = LOOKS_UNTIL_OPENED_ANEW;

    Cover(Stage stage) {
        this.stage = stage;
    }

    /** Shows the kiosk full screen, then the curtains. */
    void draw() {
        Rectangle2D bounds = Screen.getPrimary().getBounds();
        spread(stage, bounds);
        stage.show();
        stage.setFullScreen(true);
        check(bounds);
        drawCurtains(others());
    }

    /**
     * What a window manager's keys or another window took is taken back, and a screen that was turned, replaced,
     * plugged in or set otherwise is covered anew; to be called now and then.
     */
    void keep() {
        if (covered.equals(Rectangle2D.EMPTY)) {
            return;
        }
        if (stage.isFocused() && stage.isFullScreen()) {
            looksAway = 0;
        } else {
            comeBack();
        }
        Rectangle2D bounds = Screen.getPrimary().getBounds();
        if (!bounds.equals(covered)) {
            spread(stage, bounds);
            check(bounds);
        }
        drawCurtains(others());
    }

    /**
     * From behind another window or from being an icon by asking; from another of a window manager's desktops by being
     * opened anew, which it does where it was in front before, and once, so that it can't go on flickering.
     */
    private void comeBack() {
        looksAway++;
        if (looksAway == LOOKS_UNTIL_OPENED_ANEW) {
            stage.hide();
            stage.show();
        }
        stage.setIconified(false);
        stage.setFullScreen(true);
        curtains.forEach(Stage::toFront);
        stage.toFront();
        stage.requestFocus();
    }

    /** Takes the curtains away. */
    void open() {
        curtains.forEach(Stage::hide);
        curtains.clear();
        curtained = List.of();
    }

    /** Hangs a curtain before each of these parts of the desktop, and before nothing else. */
    void drawCurtains(List<Rectangle2D> screens) {
        if (screens.equals(curtained)) {
            return;
        }
        open();
        for (Rectangle2D screen : screens) {
            Stage curtain = new Stage(StageStyle.UNDECORATED);
            Scene empty = new Scene(new StackPane(), Theme.ground());
            empty.setCursor(Cursor.NONE);
            curtain.setScene(empty);
            curtain.setOnCloseRequest(request -> request.consume());
            spread(curtain, screen);
            curtain.show();
            curtains.add(curtain);
        }
        curtained = List.copyOf(screens);
        if (!screens.isEmpty()) {
            stage.requestFocus();
        }
    }

    private static List<Rectangle2D> others() {
        Screen primary = Screen.getPrimary();
        return Screen.getScreens().stream()
                .filter(screen -> !Objects.equals(screen, primary))
                .map(Screen::getBounds)
                .toList();
    }

    private static void spread(Stage stage, Rectangle2D bounds) {
        stage.setX(bounds.getMinX());
        stage.setY(bounds.getMinY());
        stage.setWidth(bounds.getWidth());
        stage.setHeight(bounds.getHeight());
    }

    /** A window may say that it is full screen and yet not cover it: only the scene's size tells. */
    private void check(Rectangle2D bounds) {
        covered = bounds;
        Scene scene = stage.getScene();
        if (scene.getWidth() < bounds.getWidth() || scene.getHeight() < bounds.getHeight()) {
            LOG.log(System.Logger.Level.WARNING, "the window does not cover the screen: "
                    + scene.getWidth() + "x" + scene.getHeight() + " of "
                    + bounds.getWidth() + "x" + bounds.getHeight() + "; check the window manager");
        }
    }
}
