package fencerow.terms;

/**
 * How often something was answered, and how often wrongly.
 *
 * @param answered in all
 * @param wrong    at most {@code answered}
 */
public record AnswerCount(long answered, long wrong) {
    /** Nobody has answered yet. */
    public static final AnswerCount NONE = new AnswerCount(0, 0);

    /** @throws IllegalArgumentException if a count is negative or more are wrong than answered */
    public AnswerCount {
        if (wrong < 0 || wrong > answered) {
            throw new IllegalArgumentException(
                    wrong + " wrong of " + answered + " answers cannot be; count each answer once");
        }
    }
}
