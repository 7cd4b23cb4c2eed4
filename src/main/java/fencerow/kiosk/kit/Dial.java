package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/**
 * An amount, with buttons that take away to its left and buttons that add to its right; where the line is too short the
 * amount stands above the buttons.
 */
public final class Dial extends SpotPane {
    private static final double GAP = 5;

    private final Label amount = Words.of(Styles.NUMBER, "");
    private final StackPane value = new StackPane(amount);
    private final List<Touch> less;
    private final List<Touch> more;
    private final double gap;
    private final double valueLeast;

    /**
     * Arranges the buttons.
     *
     * @param valueEms the least width of the amount, in ems
     * @param less     the largest step first
     * @param more     the smallest step first
     */
    public Dial(Scale scale, double valueEms, Collection<Touch> less, Collection<Touch> more) {
        this.less = List.copyOf(less);
        this.more = List.copyOf(more);
        this.gap = scale.whole(GAP);
        this.valueLeast = valueEms * scale.em();
        value.getStyleClass().add("amount-value");
        getStyleClass().add("dial");
        getChildren().addAll(this.less);
        getChildren().add(value);
        getChildren().addAll(this.more);
    }

    /** Shows an amount, in words. */
    public void show(String words) {
        amount.setText(words);
    }

    private List<Touch> buttons() {
        List<Touch> all = new ArrayList<>(less);
        all.addAll(more);
        return all;
    }

    private double buttonWidth() {
        return Math.ceil(buttons().stream().mapToDouble(button -> button.prefWidth(-1)).max().orElse(0));
    }

    @Override
    List<Spot> spots(double inner) {
        double button = buttonWidth();
        int count = buttons().size();
        double rest = inner - count * (button + gap);
        return rest >= valueLeast ? inLine(inner, button, rest) : stacked(inner, button, count);
    }

    private List<Spot> inLine(double inner, double button, double rest) {
        double height = buttons().stream().mapToDouble(each -> height(each, button)).max().orElse(0);
        height = Math.max(height, height(value, rest));
        List<Spot> spots = new ArrayList<>();
        double x = 0;
        for (Touch each : less) {
            spots.add(new Spot(each, x, 0, button, height));
            x += button + gap;
        }
        spots.add(new Spot(value, x, 0, Math.floor(rest), height));
        x = inner - more.size() * (button + gap) + gap;
        for (Touch each : more) {
            spots.add(new Spot(each, x, 0, button, height));
            x += button + gap;
        }
        return spots;
    }

    private List<Spot> stacked(double inner, double button, int count) {
        List<Spot> spots = new ArrayList<>();
        double y = height(value, inner);
        spots.add(new Spot(value, 0, 0, inner, y));
        int columns = inner >= count * (button + gap) - gap ? count : 2;
        double width = Math.floor((inner - (columns - 1) * gap) / columns);
        double height = buttons().stream().mapToDouble(each -> height(each, width)).max().orElse(0);
        y += gap;
        for (int i = 0; i < count; i++) {
            int row = i / columns;
            spots.add(new Spot(buttons().get(i), (i % columns) * (width + gap), y + row * (height + gap),
                    width, height));
        }
        return spots;
    }

    @Override
    double fullWidth() {
        return valueLeast + buttons().size() * (buttonWidth() + gap);
    }
}
