package fencerow.kiosk.frame;

import fencerow.wording.Texts;
import java.util.Map;

/** The kiosk's words in the shopper's language. */
public interface Sayings {
    /** All words in the shopper's language. */
    Texts texts();

    /** The words under {@code kiosk.} and the key. */
    default String say(String key) {
        return texts().get("kiosk." + key);
    }

    /** The words under {@code kiosk.} and the key, with arguments by name. */
    default String say(String key, Map<String, ?> arguments) {
        return texts().get("kiosk." + key, arguments);
    }
}
