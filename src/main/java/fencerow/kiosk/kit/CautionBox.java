package fencerow.kiosk.kit;

import java.util.Collection;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What can hurt someone, said in place. */
public final class CautionBox extends VBox {
    /** With a heading and one paragraph for each caution. */
    public CautionBox(String heading, Collection<String> cautions) {
        HBox top = new HBox(Icon.CAUTION.node(), Words.subheading(heading));
        top.getStyleClass().add("caution-top");
        top.setAlignment(Pos.CENTER_LEFT);
        getStyleClass().addAll(Styles.CAUTION, Styles.STACK);
        getChildren().add(top);
        cautions.forEach(caution -> getChildren().add(Words.body(caution)));
    }
}
