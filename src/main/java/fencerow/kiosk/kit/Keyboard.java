package fencerow.kiosk.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/**
 * A keyboard in the scene: letters, one tap further digits and the letters of Spanish. Keys are 15 to 20 mm wide, as
 * the panel allows, at least 15 mm high, and do not repeat.
 */
public final class Keyboard extends Pane {
    private static final double WIDEST = 20;
    private static final double LOWEST = 15;
    /** Of a key's height to its letter's size. */
    private static final double ROOM = 1.35;
    private static final double GAP = 3;
    private static final int ACROSS = 10;
    private static final List<String> LETTERS = List.of("qwertyuiop", "asdfghjkl", "zxcvbnm");
    private static final List<String> FURTHER = List.of(
            "1234567890", "\u00e1\u00e9\u00ed\u00f3\u00fa\u00fc\u00f1\u00bf\u00a1", "-/'.,&?");

    /** Digits and the letters that codes are made of. */
    private static final List<String> CODE = List.of("1234567890", "QWERTYP", "ASDFGHJK", "ZXCVBNM");

    private record Key(Touch touch, double width) {}

    /**
     * The keys that are no letters, in words.
     *
     * @param letters the key that leads back to the letters
     * @param further the key that leads to digits and further letters
     */
    public record Names(String letters, String further, String space, String backspace) {}

    /**
     * The keys of codes alone, in one layer.
     *
     * @param backspaceName what the key is called that takes the last character away
     */
    public static Keyboard ofCode(Scale scale, String backspaceName, Consumer<String> typed, Runnable backspace) {
        return new Keyboard(scale, new Names("", "", "", backspaceName), typed, backspace, CODE);
    }

    private final Scale scale;
    private final Names names;
    private final Consumer<String> typed;
    private final Runnable backspace;
    private final List<List<Key>> rows = new ArrayList<>();

    /**
     * Shows the letters.
     *
     * @param typed     gets each letter, digit, mark or space
     * @param backspace takes the last one away
     */
    public Keyboard(Scale scale, Names names, Consumer<String> typed, Runnable backspace) {
        this(scale, names, typed, backspace, LETTERS);
    }

    private Keyboard(
            Scale scale, Names names, Consumer<String> typed, Runnable backspace, List<String> layer) {
        this.scale = scale;
        this.names = names;
        this.typed = typed;
        this.backspace = backspace;
        getStyleClass().add(Styles.KEYBOARD);
        show(layer);
    }

    private void show(List<String> layer) {
        boolean letters = layer.equals(LETTERS);
        rows.clear();
        for (String line : layer) {
            List<Key> row = new ArrayList<>();
            line.codePoints().mapToObj(Character::toString).forEach(each -> row.add(letter(each)));
            rows.add(row);
        }
        rows.get(layer.size() - 1).add(new Key(new Touch(names.backspace(), Icon.BACKSPACE.node(), backspace)
                .styled(Styles.KEY, "key-wide"), 2));
        if (!layer.equals(CODE)) {
            rows.add(List.of(
                    new Key(letters
                            ? word(names.further(), () -> show(FURTHER))
                            : word(names.letters(), () -> show(LETTERS)), 2.5),
                    new Key(word(names.space(), () -> typed.accept(" ")), 5)));
        }
        getChildren().setAll(rows.stream().flatMap(List::stream).map(Key::touch).toArray(Node[]::new));
        requestLayout();
    }

    private Key letter(String letter) {
        return new Key(new Touch(letter, Words.of("key-letter", letter), () -> typed.accept(letter))
                .styled(Styles.KEY), 1);
    }

    private static Touch word(String words, Runnable action) {
        return new Touch(words, Words.of("key-words", words), action).styled(Styles.KEY, "key-wide");
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.ceil(getInsets().getTop() + getInsets().getBottom()
                + rows.size() * keyHeight() + (rows.size() - 1) * scale.whole(GAP));
    }

    @Override
    protected double computePrefWidth(double height) {
        return ACROSS * scale.whole(WIDEST) + (ACROSS - 1) * scale.whole(GAP);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double gap = scale.whole(GAP);
        double height = keyHeight();
        double room = getWidth() - getInsets().getLeft() - getInsets().getRight();
        double unit = Math.min(scale.whole(WIDEST), Math.floor((room - (ACROSS - 1) * gap) / ACROSS));
        double y = getInsets().getTop();
        for (List<Key> row : rows) {
            double width = row.stream().mapToDouble(key -> width(key, unit, gap)).sum() + (row.size() - 1) * gap;
            double x = getInsets().getLeft() + Math.rint((room - width) / 2);
            for (Key key : row) {
                key.touch().resizeRelocate(x, y, width(key, unit, gap), height);
                x += width(key, unit, gap) + gap;
            }
            y += height + gap;
        }
    }

    private double keyHeight() {
        return Math.ceil(Math.max(scale.px(LOWEST), ROOM * scale.em()));
    }

    private static double width(Key key, double unit, double gap) {
        return Math.floor(key.width() * unit + (key.width() - 1) * gap);
    }
}
