package fencerow.kiosk.trouble;

import fencerow.kiosk.frame.Doors;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.TextSize;
import fencerow.kiosk.kit.Theme;
import fencerow.kiosk.kit.Words;
import fencerow.kiosk.kit.Wrap;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import javafx.scene.Parent;
import javafx.scene.layout.VBox;

/** Says what is wrong when there is nothing to show, in words of its own: the content's cannot be read. */
public final class TroubleView {
    /** Of a middling panel: the settings, which would tell, cannot be read either. */
    private static final Scale SCALE = new Scale(3.6, TextSize.NORMAL);

    private TroubleView() {}

    /** Lists the problems, with ways to try again and to close. */
    public static Parent of(Opening.Closed closed, Doors doors) {
        ResourceBundle words = ResourceBundle.getBundle("fencerow.kiosk.trouble", Locale.ENGLISH);
        VBox list = Boxes.stack(closed.problems().stream().map(Words::body).toList());
        VBox page = Boxes.stack(
                Words.title(words.getString("title")),
                Words.body(words.getString("what-to-do")),
                Boxes.growing(new Column(SCALE, list, 0, words.getString("up"), words.getString("down"))),
                new Wrap(SCALE, List.of(
                        Buttons.primary(Icon.START_OVER, words.getString("again"), doors.restart()),
                        Buttons.secondary(Icon.CLOSE, words.getString("close"), doors.close()))));
        page.getStyleClass().addAll(Styles.SHELL, "trouble");
        page.getStylesheets().add(Theme.stylesheet(SCALE, false));
        return page;
    }
}
