package fencerow.kiosk.frame;

import java.util.Map;

/**
 * What the kiosk shows first, while it still reads everything else: what passers-by saw first the last time.
 *
 * @param diagonalMetres of the panel
 * @param words          on the page, by the page's own names for them
 */
public record Greeting(double diagonalMetres, Map<String, String> words) {
    /** Copies the words. */
    public Greeting {
        words = Map.copyOf(words);
    }
}
