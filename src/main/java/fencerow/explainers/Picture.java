package fencerow.explainers;

/**
 * A drawing of the content.
 *
 * @param name    of its file: a topic; a topic and {@code -without}; {@code job-} and a job; or {@code tractor-} and a
 *                side
 * @param drawing itself, the same in all languages
 */
public record Picture(String name, Drawing drawing) {
    /** The key of the words that say what it shows to whoever cannot see it. */
    public String altKey() {
        return altKey(name);
    }

    /** The key of a picture's text alternative. */
    public static String altKey(String name) {
        return "picture." + name + ".alt";
    }
}
