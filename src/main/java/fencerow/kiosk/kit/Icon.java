package fencerow.kiosk.kit;

import javafx.scene.Node;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.javafx.FontIcon;
import org.kordamp.ikonli.material2.Material2OutlinedAL;
import org.kordamp.ikonli.material2.Material2OutlinedMZ;

/** Pictograms by what they mean. */
public enum Icon {
    BACK(Material2OutlinedAL.ARROW_BACK),
    FORWARD(Material2OutlinedAL.ARROW_FORWARD),
    UP(Material2OutlinedAL.EXPAND_LESS),
    DOWN(Material2OutlinedAL.EXPAND_MORE),
    HOME(Material2OutlinedAL.HOME),
    SEARCH(Material2OutlinedMZ.SEARCH),
    CLOSE(Material2OutlinedAL.CLOSE),
    LEARN(Material2OutlinedMZ.MENU_BOOK),
    FIT(Material2OutlinedAL.FACT_CHECK),
    QUIZ(Material2OutlinedAL.LIGHTBULB),
    LIST(Material2OutlinedAL.ASSIGNMENT),
    PRINT(Material2OutlinedMZ.PRINT),
    START_OVER(Material2OutlinedMZ.REPLAY),
    LANGUAGE(Material2OutlinedAL.LANGUAGE),
    TEXT_SIZE(Material2OutlinedAL.FORMAT_SIZE),
    CONTRAST(Material2OutlinedMZ.TONALITY),
    UNITS(Material2OutlinedMZ.STRAIGHTEN),
    HELP(Material2OutlinedAL.HELP_OUTLINE),
    CAUTION(Material2OutlinedMZ.WARNING),
    CHECK(Material2OutlinedAL.CHECK),
    BUILD(Material2OutlinedAL.BUILD),
    LOOK(Material2OutlinedMZ.VISIBILITY),
    ORDER(Material2OutlinedAL.LOCAL_SHIPPING),
    BLOCK(Material2OutlinedAL.BLOCK),
    PIN(Material2OutlinedMZ.PUSH_PIN),
    COMPARE(Material2OutlinedAL.COMPARE_ARROWS),
    PLUS(Material2OutlinedAL.ADD),
    MINUS(Material2OutlinedMZ.REMOVE),
    BACKSPACE(Material2OutlinedAL.BACKSPACE),
    WORD(Material2OutlinedMZ.TEXT_SNIPPET),
    STAFF(Material2OutlinedMZ.VPN_KEY),
    MONEY(Material2OutlinedMZ.PAYMENTS),
    NOT_SURE(Material2OutlinedAL.HELP_OUTLINE),
    UNDO(Material2OutlinedMZ.UNDO),
    WORK(Material2OutlinedAL.CALCULATE),
    SPEAK(Material2OutlinedMZ.VOLUME_UP),
    LOWER(Material2OutlinedMZ.VERTICAL_ALIGN_BOTTOM),
    CHART(Material2OutlinedAL.BAR_CHART),
    TOUCH(Material2OutlinedMZ.TOUCH_APP),
    TALK(Material2OutlinedAL.FORUM);

    private final Ikon ikon;

    Icon(Ikon ikon) {
        this.ikon = ikon;
    }

    /** A new picture of it; its size and colour come from the theme. Decoration only: words say the same. */
    public Node node() {
        FontIcon icon = new FontIcon(ikon);
        icon.getStyleClass().add(Styles.ICON);
        return icon;
    }
}
