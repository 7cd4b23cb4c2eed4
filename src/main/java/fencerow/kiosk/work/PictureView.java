package fencerow.kiosk.work;

import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Letter;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.kit.Words;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Draws pictures of results, with what their letters stand for below. */
final class PictureView {
    private final Scale scale;

    PictureView(Scale scale) {
        this.scale = scale;
    }

    Node of(Picture picture) {
        return picture instanceof Picture.Curve curve ? curve(curve) : axles((Picture.Axles) picture);
    }

    private Node curve(Picture.Curve curve) {
        VBox box = Boxes.tight(new CurvePane(scale, curve), Words.small(curve.name()));
        for (int i = 0; i < curve.loads().size(); i++) {
            HBox row = new HBox(new Letter(i), new Sign(curve.loads().get(i).sign()),
                    Boxes.growing(Words.small(curve.loads().get(i).words())));
            row.getStyleClass().add("remark");
            row.setAlignment(Pos.TOP_LEFT);
            box.getChildren().add(row);
        }
        return box;
    }

    private Node axles(Picture.Axles axles) {
        VBox box = Boxes.tight(new AxlesPane(scale, axles));
        if (!axles.note().isEmpty()) {
            box.getChildren().add(Words.small(axles.note()));
        }
        return box;
    }
}
