package fencerow.kiosk.kit;

import fencerow.terms.Offering;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** How a feature is offered, one line for each machine class; told by words and a sign of its own shape. */
public final class OfferingTable extends VBox {
    /**
     * One line.
     *
     * @param machineClass in words
     * @param offering     how it is offered there
     * @param words        the same in words
     */
    public record Line(String machineClass, Offering offering, String words) {}

    /** Draws the lines. */
    public OfferingTable(List<Line> lines) {
        getStyleClass().add(Styles.OFFERING);
        lines.forEach(line -> getChildren().add(row(line)));
    }

    private static HBox row(Line line) {
        StackPane sign = new StackPane(icon(line.offering()).node());
        sign.getStyleClass().addAll("offering-sign", line.offering().id());
        Label name = Words.of("offering-class", line.machineClass());
        Label words = Words.of("offering-words", line.words());
        name.setPrefWidth(1);
        words.setPrefWidth(1);
        HBox row = new HBox(sign, Boxes.growing(name), Boxes.growing(words));
        row.getStyleClass().add("offering-row");
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static Icon icon(Offering offering) {
        return switch (offering) {
            case INCLUDED -> Icon.CHECK;
            case COMMON -> Icon.LOOK;
            case EXTRA -> Icon.PLUS;
            case FACTORY_ONLY -> Icon.ORDER;
            case NEVER -> Icon.CLOSE;
            case VARIES -> Icon.NOT_SURE;
        };
    }
}
