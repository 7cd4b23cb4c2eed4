package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Digits to touch, and a key that takes the last one away. */
public final class Keypad extends VBox {
    private static final List<String> ROWS = List.of("789", "456", "123");
    private static final String THOUSAND = "000";

    /**
     * Draws the keys.
     *
     * @param backName  the name of the key that takes away
     * @param typed     gets a digit, or three noughts
     * @param takenAway takes the last digit away
     */
    public Keypad(Scale scale, String backName, Consumer<String> typed, Runnable takenAway) {
        getStyleClass().add("keypad");
        for (String row : ROWS) {
            List<Touch> keys = new ArrayList<>();
            row.codePoints().mapToObj(Character::toString).forEach(digit -> keys.add(key(digit, typed)));
            getChildren().add(new Columns(scale, 0, keys.size(), keys));
        }
        Touch back = new Touch(backName, Icon.BACKSPACE.node(), takenAway).styled(Styles.KEY, "digit");
        List<Touch> last = List.of(key("0", typed), key(THOUSAND, typed), back);
        getChildren().add(new Columns(scale, 0, last.size(), last));
        setMaxWidth(Region.USE_PREF_SIZE);
    }

    private static Touch key(String digits, Consumer<String> typed) {
        return new Touch(digits, Words.of("key-letter", digits), () -> typed.accept(digits))
                .styled(Styles.KEY, "digit");
    }
}
