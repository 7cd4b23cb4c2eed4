package fencerow.kiosk.frame;

import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.Theme;
import javafx.scene.Scene;
import javafx.util.Subscription;
import org.jspecify.annotations.Nullable;

/** Gives a scene its look for the panel and the shopper. */
final class Look {
    private Look() {}

    /** Whether the scene is there and has a size. */
    static boolean isSized(@Nullable Scene scene) {
        return scene != null && scene.getWidth() > 0 && scene.getHeight() > 0;
    }

    /** Does something whenever the scene has another size, until it is let go of. */
    static Subscription whenResized(Scene scene, Runnable then) {
        Runnable resized = () -> {
            if (isSized(scene)) {
                then.run();
            }
        };
        return Subscription.combine(
                scene.widthProperty().subscribe(resized), scene.heightProperty().subscribe(resized));
    }

    static boolean isLandscape(Scene scene) {
        return scene.getWidth() >= scene.getHeight();
    }

    /** The scale that the scene is shown at from now on. */
    static Scale give(Scene scene, double diagonalMetres, Comfort comfort) {
        Scale scale = Scale.of(diagonalMetres, Math.max(1, scene.getWidth()), Math.max(1, scene.getHeight()),
                comfort.textSize());
        scene.getRoot().getStyleClass().setAll("root", Styles.SHELL,
                isLandscape(scene) ? Styles.LANDSCAPE : Styles.PORTRAIT,
                Styles.TEXT_SIZE + comfort.textSize().id(),
                comfort.highContrast() ? Styles.HIGH_CONTRAST : Styles.USUAL_CONTRAST);
        scene.setUserAgentStylesheet(Theme.stylesheet(scale, comfort.highContrast()));
        return scale;
    }
}
